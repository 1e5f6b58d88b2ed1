using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Chances;

/// <summary>That check, mend and simulate weigh causes by the table they are given.</summary>
public sealed class ChancesWeighTests
{
    /// <summary>A club whose riggers are knocked about, and whose inserts never are worn.</summary>
    private const string Riggers =
        "{ \"format\": \"gatewright.chances/1\", \"chances\": { \"rigger\": 0.2, \"gatePitch\": 0.0001, \"pinAft\": 0.0001, \"pinOut\": 0.0001 } }";

    [Fact]
    public void A_table_of_defaults_changes_nothing()
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, "{ \"format\": \"gatewright.chances/1\" }");
        foreach (string[] args in (string[][])[["check", ExampleFiles.Shed, "--json"], ["mend", ExampleFiles.Small, "--json"], ["simulate", "--boats", "10", "--class", "1x", "--json"]])
        {
            Assert.Equal(ProgramRun.Of(args).Output, ProgramRun.Of([.. args, "--chances", file.Path]).Output);
        }
    }

    [Fact]
    public void Check_weighs_causes_by_it_and_judges_as_before()
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, Riggers);
        using JsonDocument usual = JsonDocument.Parse(ProgramRun.Of("check", ExampleFiles.Shed, "--json").Output);
        using JsonDocument taught = JsonDocument.Parse(ProgramRun.Of("check", ExampleFiles.Shed, "--chances", file.Path, "--json").Output);

        Assert.Equal("gate-pitch", Cause(usual, "Lapwing", 3));
        Assert.Equal("rigger", Cause(taught, "Lapwing", 3));
        Assert.Equal(Verdicts(usual), Verdicts(taught));
    }

    [Theory]
    [InlineData("mend", ExampleFiles.Shed)]
    [InlineData("simulate", "--boats", "10", "--class", "1x")]
    public void Plans_and_simulations_rest_on_it(params string[] args)
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, Riggers);
        Assert.NotEqual(ProgramRun.Of([.. args, "--json"]).Output, ProgramRun.Of([.. args, "--json", "--chances", file.Path]).Output);
    }

    [Fact]
    public void A_simulation_says_by_which_table_it_drew()
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, Riggers);
        string told = ProgramRun.Of("simulate", "--boats", "10", "--class", "1x", "--plain", "--chances", file.Path).Output;
        Assert.Contains($"is as {file.Path} has it.", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Nothing was judged.", "check", ExampleFiles.Small)]
    [InlineData("Nothing was judged.", "mend", ExampleFiles.Small)]
    [InlineData("Nothing was simulated.", "simulate", "--boats", "10", "--class", "1x")]
    public void A_table_with_an_error_in_it_is_wrong_input(string so, params string[] args)
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, "{ \"format\": \"gatewright.chances/1\", \"chances\": { \"rigger\": 1 } }");
        ProgramRun run = ProgramRun.Of([.. args, "--chances", file.Path]);

        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.EndsWith($"at $.chances.rigger: '1' is out of range: expected a chance, from 0 to below 1.\n1 error. {so}\n", run.Error, StringComparison.Ordinal);
    }

    private static string Cause(JsonDocument check, string boat, int seat) => Boat(check, boat)
        .GetProperty("seats").EnumerateArray().Single(s => s.GetProperty("seat").GetInt32() == seat)
        .GetProperty("causes")[0].GetProperty("cause").GetString()!;

    /// <summary>Of boats read at every station: what was not read is predicted, and that rests on the table.</summary>
    private static IEnumerable<string?> Verdicts(JsonDocument check) =>
        check.RootElement.GetProperty("boats").EnumerateArray()
            .Where(boat => boat.GetProperty("seats").EnumerateArray().All(seat =>
                seat.GetProperty("pitch").EnumerateArray().All(pitch => pitch.GetProperty("read").GetBoolean())))
            .OrderBy(boat => boat.GetProperty("boat").GetString(), StringComparer.Ordinal)
            .Select(boat => $"{boat.GetProperty("boat").GetString()} {boat.GetProperty("verdict").GetString()}");

    private static JsonElement Boat(JsonDocument check, string name) =>
        check.RootElement.GetProperty("boats").EnumerateArray().Single(boat => boat.GetProperty("boat").GetString() == name);
}
