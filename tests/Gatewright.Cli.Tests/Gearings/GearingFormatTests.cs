using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Gearings;

/// <summary>The program's real output against docs/gearing.schema.json, and that against its page.</summary>
public sealed class GearingFormatTests
{
    private static readonly SchemaFile s_schema = new("docs/gearing.schema.json");
    private static readonly FormatPage s_page = new("docs/gearing-format.md", "docs/gearing.schema.json");

    [Fact]
    public void The_page_and_the_schema_have_the_same_objects() => s_page.AssertSameObjects();

    [Fact]
    public void Each_object_has_the_same_keys_on_the_page_as_in_the_schema() => s_page.AssertSameKeys();

    [Fact]
    public void What_is_told_is_as_the_schema_says()
    {
        s_schema.AssertValid(Output);
        s_schema.AssertValid(ProgramRun.Of("gearing", "--class", "8+", "--crew", "men", "--json").Output);
        s_schema.AssertValid(ProgramRun.Of("gearing", "--span", "160", "--inboard", "88.5", "--oar-length", "288.5", "--want", "catch=85", "--json").Output);
        ProgramRun wrong = ProgramRun.Of("gearing", ExampleFiles.Rig, "--boat", "Wren", "--json");
        Assert.Equal(2, wrong.Status);
        s_schema.AssertValid(wrong.Output);
    }

    /// <remarks>
    /// The whole with its eight keys, a measure with four, a figure with three; a change with three, its interaction with eight figures, what is done alone and
    /// together with two, each with its steps of two and figures of five; a wish with four, the one figure wanted, an answer with three, its step and its eight figures.
    /// </remarks>
    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many() => Assert.Equal(
        (8 + 1) + (4 + 1) + (3 + 1) + (3 + 1) + (8 + 1) + (2 * ((2 + 1) + (2 + 1) + (5 + 1))) + (4 + 1) + (1 + 1) + (3 + 1) + (2 + 1) + (8 + 1),
        s_schema.AssertRefusesKeysTooFewOrTooMany(Output));

    [Theory]
    [InlineData("$.format", "gatewright.gearing/2")]
    [InlineData("$.rowing", "kayak")]
    [InlineData("$.rig[0].measure", "reach")]
    [InlineData("$.figures[0].figure", "speed")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word) => s_schema.AssertRefuses(Output, path, word);

    private static string Output => ProgramRun.Of(
        "gearing", ExampleFiles.Rig, "--boat", "Dunlin", "--seat", "2", "--change", "spread=-1", "--want", "load=+1%", "--json").Output;
}
