using System.Text.Json;
using Gatewright.Cli.Tests.Clubs;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Oars;

/// <summary>Oars in the terminal.</summary>
public sealed class OarsTests(ClubStores stores)
{
    [Fact]
    public void Sets_are_drawn_as_expected()
    {
        ProgramRun run = ProgramRun.Of("oars", ExampleFiles.Oars, "--match", "4", "--width", "90");

        Expectation.Matches("oars", run.Output);
        Assert.Equal((1, string.Empty), (run.Status, run.Error));
    }

    [Fact]
    public void Sets_are_told_as_expected() =>
        Expectation.Matches("oars-plain", ProgramRun.Of("oars", ExampleFiles.Oars, "--set", "alluvium", "--plain").Output);

    [Fact]
    public void A_set_that_matches_needs_no_attention() =>
        Assert.Equal(0, ProgramRun.Of("oars", ExampleFiles.Oars, "--set", "Drumlin").Status);

    [Fact]
    public void For_programs_the_turn_stands_beside_the_oar_that_needs_it()
    {
        using JsonDocument json = JsonDocument.Parse(ProgramRun.Of("oars", ExampleFiles.Oars, "--json").Output);

        JsonElement sleeve = json.RootElement.GetProperty("sets")[0].GetProperty("items")[0];
        JsonElement fifth = sleeve.GetProperty("oars")[4];
        Assert.Equal(("gatewright.oars/1", "sleeve", "fair"), (json.RootElement.GetProperty("format").GetString(), sleeve.GetProperty("item").GetString(), sleeve.GetProperty("worth").GetString()));
        Assert.Equal(("adjust", true, 2.5), (fifth.GetProperty("verdict").GetString(), fifth.GetProperty("outlier").GetBoolean(), fifth.GetProperty("turn").GetProperty("toBowDegrees").GetDouble()));
        Assert.Equal(19, json.RootElement.GetProperty("oars").GetArrayLength());
    }

    [Fact]
    public async Task A_club_s_oars_are_those_recorded()
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun recorded = place.Run("record", "--oars", ExampleFiles.Oars, "--member", "kim", "--club", "shed", "--new-club", "The shed");

        Assert.Contains("74 readings of oars", recorded.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("all of it is on record already", place.Run("record", "--oars", ExampleFiles.Oars, "--member", "kim").Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(
            ProgramRun.Of("oars", ExampleFiles.Oars, "--plain").Output,
            place.Run("oars", "--plain").Output);
    }

    [Fact]
    public void What_is_wrong_is_said_and_nothing_is_compared()
    {
        ProgramRun run = ProgramRun.Of(["oars", "-"], new() { Input = "oar,sleeve\nA,45\n" });

        Assert.Equal(2, run.Status);
        Assert.Contains("line 2, column sleeve: '45' is no sleeve of an oar", run.Error, StringComparison.Ordinal);
        Assert.Contains("is none of the sets: Alluvium, Drumlin, Esker, Tarn", ProgramRun.Of("oars", ExampleFiles.Oars, "--set", "Heath").Error, StringComparison.Ordinal);
    }
}
