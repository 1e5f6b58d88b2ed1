using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Oars;

/// <summary>The program's real output against docs/oars.schema.json, and that against its page.</summary>
public sealed class OarsFormatTests
{
    private static readonly SchemaFile s_schema = new("docs/oars.schema.json");
    private static readonly FormatPage s_page = new("docs/oars-format.md", "docs/oars.schema.json");

    [Fact]
    public void The_page_and_the_schema_have_the_same_objects() => s_page.AssertSameObjects();

    [Fact]
    public void Each_object_has_the_same_keys_on_the_page_as_in_the_schema() => s_page.AssertSameKeys();

    [Fact]
    public void What_is_told_is_as_the_schema_says()
    {
        s_schema.AssertValid(Output);
        s_schema.AssertValid(ProgramRun.Of("oars", ExampleFiles.Oars, "--set", "Drumlin", "--json").Output);
        ProgramRun wrong = ProgramRun.Of(["oars", "-", "--json"], new() { Input = "oar,sleeve\nA,45\n" });
        Assert.Equal(2, wrong.Status);
        s_schema.AssertValid(wrong.Output);
    }

    /// <remarks>The whole with its five keys, a set with four, an item with seven, a judged oar with eight, a turn with four, an oar with ten, and its four figures with three.</remarks>
    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many() =>
        Assert.Equal((5 + 1) + (4 + 1) + (7 + 1) + (8 + 1) + (4 + 1) + (10 + 1) + (4 * (3 + 1)), s_schema.AssertRefusesKeysTooFewOrTooMany(Output));

    [Theory]
    [InlineData("$.format", "gatewright.oars/2")]
    [InlineData("$.sets[0].verdict", "safe")]
    [InlineData("$.sets[0].items[0].item", "width")]
    [InlineData("$.sets[0].items[0].worth", "much")]
    [InlineData("$.oars[0].side", "left")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word) => s_schema.AssertRefuses(Output, path, word);

    private static string Output => ProgramRun.Of("oars", ExampleFiles.Oars, "--json").Output;
}
