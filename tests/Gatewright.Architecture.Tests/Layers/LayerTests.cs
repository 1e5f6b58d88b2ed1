using System.Reflection;

namespace Gatewright.Architecture.Tests.Layers;

public class LayerTests
{
    /// <summary>The projects and what each may rest on. A new project finds its place here before it finds its code.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Gatewright.Core"] = [],
        ["Gatewright.Words"] = ["Gatewright.Core"],
        ["Gatewright.Journal"] = ["Gatewright.Core", "Gatewright.Words"],
        ["Gatewright.Replica"] = ["Gatewright.Journal"],
        ["Gatewright.Planning"] = ["Gatewright.Core", "Gatewright.Words", "Gatewright.Journal"],
        ["Gatewright.Drawings"] = ["Gatewright.Core"],
        ["Gatewright.Printing"] = ["Gatewright.Core", "Gatewright.Words", "Gatewright.Journal"],
        ["Gatewright.Store"] = ["Gatewright.Journal"],
        ["Gatewright.Store.Sqlite"] = ["Gatewright.Store"],
        ["Gatewright.Store.Postgres"] = ["Gatewright.Store"],
        ["Gatewright.App"] = ["Gatewright.Core", "Gatewright.Journal", "Gatewright.Replica", "Gatewright.Words", "Gatewright.Drawings"],
        ["Gatewright.Server"] = ["Gatewright.App", "Gatewright.Words", "Gatewright.Journal", "Gatewright.Planning", "Gatewright.Printing", "Gatewright.Store", "Gatewright.Store.Sqlite", "Gatewright.Store.Postgres"],
        ["Gatewright.Cli"] = ["Gatewright.Words", "Gatewright.Journal", "Gatewright.Planning", "Gatewright.Printing", "Gatewright.Store", "Gatewright.Store.Sqlite", "Gatewright.Store.Postgres"],
    };

    [Fact]
    public void Projects_rest_only_on_the_layer_below_them() =>
        Rule.Holds(Misplaced(ProjectFile.Under("src")));

    [Theory]
    [InlineData("Gatewright.Core", "Gatewright.Journal", "Gatewright.Core rests on Gatewright.Journal")]
    [InlineData("Gatewright.Journal", "Gatewright.Cli", "Gatewright.Journal rests on Gatewright.Cli")]
    [InlineData("Gatewright.Shed", "Gatewright.Core", "Gatewright.Shed has no place among the layers")]
    public void A_project_that_rests_on_a_layer_above_is_found(string name, string reference, string expected)
    {
        var project = ProjectFile.Parse(
            $"src/{name}/{name}.csproj",
            $"""<Project><ItemGroup><ProjectReference Include="../{reference}/{reference}.csproj" /></ItemGroup></Project>""");

        Assert.Equal([expected], Misplaced([project]));
    }

    [Fact]
    public void Core_rests_on_the_framework_alone() =>
        Rule.Holds(OutsideFramework(typeof(Core.Side).Assembly));

    [Fact]
    public void A_library_beside_the_framework_is_found() =>
        Assert.Contains("xunit.v3.core", OutsideFramework(typeof(LayerTests).Assembly));

    private static List<string> Misplaced(IReadOnlyList<ProjectFile> projects) =>
        [.. projects.SelectMany(project => Allowed.TryGetValue(project.Name, out string[]? allowed)
            ? project.Projects.Except(allowed).Select(reference => $"{project.Name} rests on {reference}")
            : [$"{project.Name} has no place among the layers"])];

    private static List<string> OutsideFramework(Assembly assembly)
    {
        string framework = Path.GetDirectoryName(typeof(object).Assembly.Location)!;
        return [.. assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name!)
            .Where(name => !File.Exists(Path.Combine(framework, name + ".dll")))];
    }
}
