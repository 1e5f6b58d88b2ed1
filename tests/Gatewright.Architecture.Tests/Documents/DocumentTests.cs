namespace Gatewright.Architecture.Tests.Documents;

public class DocumentTests
{
    private static IReadOnlyList<string> Pages =>
        [.. Directory.EnumerateFiles(Repository.Root, "*.md").Select(Path.GetFileName).OfType<string>(), .. Repository.Files("docs", "*.md")];

    [Fact]
    public void What_a_page_points_at_exists() => Rule.Holds(
        [.. from page in Pages
            from path in Mentions.Of(page, Repository.Read(page))
            where !Path.Exists(Path.Combine(Repository.Root, path))
            select $"{page} points at {path}, which is not there"]);

    [Fact]
    public void The_pages_for_those_who_carry_on_are_looked_at() =>
        Assert.Superset(new HashSet<string> { "docs/dependencies.md", "docs/working-on-it.md" }, Pages.ToHashSet());

    [Theory]
    [InlineData("See [why](decisions/0001.md) and [there](../src/A.cs#L3).", "docs/decisions/0001.md", "docs/../src/A.cs")]
    [InlineData("In `src/Core/Side.cs` or `tests/Shared`.", "src/Core/Side.cs", "tests/Shared")]
    [InlineData("Not [elsewhere](https://example.org/a) nor [here](#below) nor `./test` nor a/b.")]
    public void A_page_points_at(string text, params string[] expected) =>
        Assert.Equal(expected, Mentions.Of("docs/page.md", text));
}
