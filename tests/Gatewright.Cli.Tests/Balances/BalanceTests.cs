using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Balances;

/// <summary>A boat's balance in the terminal.</summary>
public sealed class BalanceTests
{
    private const string Shed = "examples/shed.csv";

    [Fact]
    public void A_boat_is_told_as_expected() =>
        Expectation.Matches("balance", ProgramRun.Of("balance", Shed, "--boat", "Bittern", "--width", "80").Output);

    [Fact]
    public void The_caution_comes_first_and_what_was_measured_against_it_last()
    {
        string[] lines = ProgramRun.Of("balance", Shed, "--boat", "Bittern", "--plain").Lines;

        Assert.StartsWith("This is a model.", lines[0], StringComparison.Ordinal);
        Assert.Contains("Grift, Tummers, Westerweel", lines.Last(l => l.Length > 0), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_boat_is_written_for_programs_and_the_same_twice()
    {
        string first = ProgramRun.Of("balance", Shed, "--json").Output;
        using var told = JsonDocument.Parse(first);

        Assert.Equal("gatewright.balance/1", told.RootElement.GetProperty("format").GetString());
        Assert.Equal(first, ProgramRun.Of("balance", Shed, "--json").Output);
        Assert.All(told.RootElement.GetProperty("boats").EnumerateArray(), boat =>
        {
            JsonElement gates = boat.GetProperty("gates");
            if (gates.ValueKind == JsonValueKind.Array)
            {
                // Written to 4 decimals, a gate each.
                double sum = gates.EnumerateArray().Sum(g => g.GetProperty("roll").GetProperty("value").GetDouble());
                Assert.Equal(boat.GetProperty("meanRoll").GetProperty("value").GetDouble(), sum, 0.001);
            }
        });
    }

    /// <summary>The women's peak is 1020/1350 of the men's, and all forces go with it.</summary>
    [Fact]
    public void A_weaker_pull_makes_less_of_the_same()
    {
        double men = Roll("men");

        Assert.Equal(1020.0 / 1350, Roll("women") / men, 1e-4);

        static double Roll(string pull)
        {
            using var told = JsonDocument.Parse(ProgramRun.Of("balance", Shed, "--boat", "Bittern", "--pull", pull, "--json").Output);
            return told.RootElement.GetProperty("boats")[0].GetProperty("meanRoll").GetProperty("value").GetDouble();
        }
    }

    [Fact]
    public void A_boat_not_read_whole_is_said_to_be_so()
    {
        using var file = new TemporaryFile(["boat,class,seat,side,at,reading", "Teal,2-,1,port,catch,4"]);

        Assert.Contains("Not every gate of this boat was read.", ProgramRun.Of("balance", file.Path, "--plain").Output, StringComparison.Ordinal);
    }
}
