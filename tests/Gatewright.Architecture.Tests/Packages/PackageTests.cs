using Gatewright.Architecture.Tests.Layers;

namespace Gatewright.Architecture.Tests.Packages;

public class PackageTests
{
    private static readonly IReadOnlyList<string> Central = PackageTable.Central(Repository.Read("Directory.Packages.props"));

    /// <summary>The property file of all tests counts as one more project.</summary>
    private static readonly IReadOnlyList<ProjectFile> Projects =
    [
        .. ProjectFile.Under("src"), .. ProjectFile.Under("tests"), .. ProjectFile.Under("bench"),
        ProjectFile.Parse("every test project", Repository.Read("tests/Directory.Build.props")),
    ];

    [Fact]
    public void The_page_of_dependencies_says_which_packages_are_used_and_where() =>
        Assert.Equal(
            PackageTable.Used(Projects, Central),
            PackageTable.Documented(Repository.Read("docs/dependencies.md")));

    [Fact]
    public void No_package_is_kept_that_nobody_uses() =>
        Rule.Holds([.. Central.Except(Projects.SelectMany(project => project.Packages))]);

    [Fact]
    public void A_row_is_read_as_it_stands()
    {
        const string Page = "Text.\n\n| Package | Licence | Used in | Why |\n|---|---|---|---|\n| B | MIT | Two, One | Because. |\n| A | MIT | One | So. |\n";

        Assert.Equal(["A: One", "B: One, Two"], PackageTable.Documented(Page));
    }

    [Fact]
    public void A_use_that_the_page_does_not_name_is_seen()
    {
        var project = ProjectFile.Parse(
            "One.csproj", """<Project><ItemGroup><PackageReference Include="A" PrivateAssets="all" /></ItemGroup></Project>""");

        Assert.Equal(["A: One", "B: "], PackageTable.Used([project], ["A", "B"]));
    }
}
