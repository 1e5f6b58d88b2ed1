using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Balances;

/// <summary>A pair whose gates read as they should, and one oar whose sleeve was read 2° off with the boat.</summary>
public sealed class SleeveFirstTests
{
    private static readonly string[] s_rows =
    [
        "boat,class,seat,side,at,reading,item",
        .. new[] { "catch", "abeam", "finish" }.SelectMany(at => new[] { $"Teal,2-,1,starboard,{at},4,gate", $"Teal,2-,2,port,{at},4,gate" }),
        .. Enumerable.Repeat("Teal,2-,2,port,abeam,2.5,sleeve", 3),
    ];

    [Fact]
    public void The_sleeve_is_named_with_how_far_and_which_way_it_is_turned()
    {
        using var file = new TemporaryFile(s_rows);

        string told = ProgramRun.Of("balance", file.Path, "--plain").Output;

        Assert.Contains("The sleeve of the oar of seat 2 port first, for balance, rather than a gate: ", told, StringComparison.Ordinal);
        Assert.Matches(@"turned by [12]\.\d plus or minus 0\.\d degrees to the bow the roll moment", told);
        Assert.Contains("the top of the blade has to come", told, StringComparison.Ordinal);
        Assert.Contains("Heat and glue only as the oar maker says", told, StringComparison.Ordinal);
    }

    [Fact]
    public void For_programs_the_turn_is_a_figure()
    {
        using var file = new TemporaryFile(s_rows);

        using var told = JsonDocument.Parse(ProgramRun.Of("balance", file.Path, "--json").Output);

        JsonElement turn = Assert.Single(told.RootElement.GetProperty("boats")[0].GetProperty("forRoll").GetProperty("sleeves").EnumerateArray());
        Assert.Equal((2, "port"), (turn.GetProperty("seat").GetInt32(), turn.GetProperty("side").GetString()));
        Assert.Equal(JsonValueKind.Null, turn.GetProperty("oar").ValueKind);
        Assert.InRange(turn.GetProperty("toBow").GetProperty("value").GetDouble(), 1, 2.5);
        Assert.InRange(turn.GetProperty("toBow").GetProperty("u").GetDouble(), 0.1, 1);
        Assert.True(turn.GetProperty("fall").GetDouble() > 0);
    }

    /// <summary>A gain has four keys; the turn has six, and its figure two, in either choice.</summary>
    [Fact]
    public void The_schema_holds_the_turns_too()
    {
        using var file = new TemporaryFile(s_rows);
        var schema = new SchemaFile("docs/balance.schema.json");
        string told = ProgramRun.Of("balance", file.Path, "--json").Output;

        schema.AssertValid(told);
        Assert.Equal(
            (4 + 1) + (7 + 1) + (3 + 1) + (7 + 1) + (5 + 1) + (2 * ((4 + 1) + (4 + 1) + (6 + 1) + (2 + 1))) + (8 * (2 + 1)),
            schema.AssertRefusesKeysTooFewOrTooMany(told));
    }
}
