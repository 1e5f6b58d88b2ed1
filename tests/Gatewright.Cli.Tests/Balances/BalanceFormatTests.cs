using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Balances;

/// <summary>The program's real output against docs/balance.schema.json, and that against its page.</summary>
public sealed class BalanceFormatTests
{
    private static readonly SchemaFile s_schema = new("docs/balance.schema.json");
    private static readonly FormatPage s_page = new("docs/balance-format.md", "docs/balance.schema.json");

    [Fact]
    public void The_page_and_the_schema_have_the_same_objects() => s_page.AssertSameObjects();

    [Fact]
    public void Each_object_has_the_same_keys_on_the_page_as_in_the_schema() => s_page.AssertSameKeys();

    [Fact]
    public void What_is_told_is_as_the_schema_says()
    {
        s_schema.AssertValid(ProgramRun.Of("balance", ExampleFiles.Shed, "--json").Output);
        ProgramRun wrong = ProgramRun.Of("balance", ExampleFiles.Wrong, "--json");
        Assert.Equal(2, wrong.Status);
        s_schema.AssertValid(wrong.Output);
    }

    /// <remarks>
    /// The whole with its four keys, a boat with seven, a point with three, a gate with seven, its oar with five; two choices with four and their gains with four; the
    /// mean roll, a gate's four figures and its oar's three with two.
    /// </remarks>
    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many() =>
        Assert.Equal((4 + 1) + (7 + 1) + (3 + 1) + (7 + 1) + (5 + 1) + (2 * ((4 + 1) + (4 + 1))) + (8 * (2 + 1)), s_schema.AssertRefusesKeysTooFewOrTooMany(Output));

    [Theory]
    [InlineData("$.format", "gatewright.balance/2")]
    [InlineData("$.boats[0].class", "9+")]
    [InlineData("$.boats[0].gates[0].side", "left")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word) => s_schema.AssertRefuses(Output, path, word);

    private static string Output => ProgramRun.Of("balance", ExampleFiles.Shed, "--boat", "Bittern", "--json").Output;
}
