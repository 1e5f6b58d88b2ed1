namespace Gatewright.Architecture.Tests.Sources;

public class SourceTests
{
    /// <summary>Without the migrations: a tool writes them, and nobody keeps them in mind.</summary>
    private static readonly IReadOnlyList<SourceFile> Program =
        [.. SourceFile.Under("src").Where(f => !f.Path.Contains("/Migrations/", StringComparison.Ordinal))];

    private static readonly IReadOnlyList<SourceFile> Everything = SourceFile.Under("src", "tests", "bench");

    [Fact]
    public void No_file_of_the_program_is_too_long_to_hold_in_mind() => Rule.Holds(SourceRules.LongFiles(Program));

    [Fact]
    public void Names_say_what_a_thing_is() => Rule.Holds(SourceRules.EmptyNames(Everything));

    [Fact]
    public void No_work_is_left_open() => Rule.Holds(SourceRules.OpenWork(Everything));

    [Fact]
    public void Namespaces_are_folders() => Rule.Holds(SourceRules.StrayNamespaces(Program));

    [Fact]
    public void Every_folder_is_looked_at() => Assert.All(
        ["src/Gatewright.Core/Geometry/Angle.cs", "src/Gatewright.Core/Side.cs", "tests/Gatewright.Architecture.Tests/Rule.cs"],
        path => Assert.Contains(Everything, file => file.Path == path));

    [Theory]
    [InlineData(400, 0)]
    [InlineData(401, 1)]
    public void A_file_over_400_lines_is_found(int lines, int found) =>
        Assert.Equal(found, SourceRules.LongFiles([Sample(string.Concat(Enumerable.Repeat("line\n", lines)))]).Count);

    [Theory]
    [InlineData("internal static class Pitch" + "Helper", 1)]
    [InlineData("public sealed record Boat" + "Manager(string Name)", 1)]
    [InlineData("enum U" + "tils", 1)]
    [InlineData("public interface IRack", 0)]
    [InlineData("/// <summary>A rigger manages without a helper.</summary>", 0)]
    public void A_name_that_says_nothing_is_found(string line, int found) =>
        Assert.Equal(found, SourceRules.EmptyNames([Sample(line)]).Count);

    [Theory]
    [InlineData("// TO" + "DO: the other side", 1)]
    [InlineData("// fine; FIX" + "ME later", 1)]
    [InlineData("throw new NotImplemented" + "Exception();", 1)]
    [InlineData("// nothing to do here", 0)]
    public void Open_work_is_found(string line, int found) =>
        Assert.Equal(found, SourceRules.OpenWork([Sample(line)]).Count);

    [Theory]
    [InlineData("namespace Gatewright.Core.Geometry;", 0)]
    [InlineData("namespace Gatewright.Core;", 1)]
    [InlineData("namespace Gatewright.Core.Numerics;", 1)]
    public void A_namespace_that_is_not_its_folder_is_found(string line, int found) =>
        Assert.Equal(found, SourceRules.StrayNamespaces([Sample(line)]).Count);

    private static SourceFile Sample(string text) => new("src/Gatewright.Core/Geometry/Sample.cs", text);
}
