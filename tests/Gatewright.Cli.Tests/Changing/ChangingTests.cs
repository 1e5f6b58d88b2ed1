using System.Text.Json;
using Gatewright.Cli.Tests.Clubs;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Journal.Facts;

namespace Gatewright.Cli.Tests.Changing;

/// <summary>Changes of rig, comparisons and the road, from files and from a club.</summary>
public sealed class ChangingTests(ClubStores stores)
{
    private const string Fours = "examples/two-fours.csv";

    [Fact]
    public void A_change_back_to_a_day_is_told_as_expected() => Matches("change-to-day", 1, "change", Fours, "--boat", "Heron", "--to-day", "2026-05-04");

    [Fact]
    public void So_is_one_to_another_boat_for_a_screen_reader() =>
        Matches("change-to-boat-plain", 1, "change", Fours, "--boat", "Heron", "--to-boat", "Merlin", "--plain");

    [Fact]
    public void So_is_one_to_a_crew_for_programs() =>
        Matches("change-to-crew-json", 1, "change", Fours, "--boat", "Heron", "--to-crew", "women", "--json");

    [Fact]
    public void Two_days_are_compared_as_expected() => Matches("compare-days", 1, "compare", Fours, "--boat", "Heron", "--on", "2026-05-04");

    [Fact]
    public void Two_boats_are_compared_as_expected_for_programs() =>
        Matches("compare-boats-json", 1, "compare", Fours, "--boat", "Heron", "--with", "Merlin", "--json");

    [Fact]
    public void The_road_is_told_as_expected() => Matches("travel", 0, "travel", Fours, "--boat", "Merlin");

    [Fact]
    public void The_road_is_told_for_programs_as_expected() => Matches("travel-json", 0, "travel", Fours, "--boat", "Merlin", "--json");

    [Fact]
    public void A_boat_beside_itself_has_nothing_to_do_and_does_not_differ()
    {
        Assert.Equal(0, ProgramRun.Of("change", Fours, "--boat", "Merlin", "--to-boat", "Merlin").Status);
        Assert.Equal(0, ProgramRun.Of("compare", Fours, "--boat", "Merlin", "--with", "Merlin").Status);
    }

    [Theory]
    [InlineData("Say which rig to come to", "change", Fours, "--boat", "Heron")]
    [InlineData("Say which rig to come to", "change", Fours, "--boat", "Heron", "--to-boat", "Merlin", "--to-crew", "men")]
    [InlineData("is none of the boats whose rig is known: Heron, Merlin", "change", Fours, "--boat", "Wren", "--to-boat", "Merlin")]
    [InlineData("say which boat is meant: Heron, Merlin", "travel", Fours)]
    [InlineData("no rig for 4- is kept under a name", "change", Fours, "--boat", "Heron", "--to", "Regatta")]
    [InlineData("nothing of its rig is known then", "compare", Fours, "--boat", "Heron", "--on", "2025-01-01")]
    [InlineData("Say what to compare with", "compare", Fours, "--boat", "Heron")]
    [InlineData("they have no rig in common", "compare", ExampleFiles.Rig, "--boat", "Dunlin", "--with", "Sandpiper")]
    [InlineData("they have no rig in common", "change", ExampleFiles.Rig, "--boat", "Dunlin", "--to-boat", "Sandpiper")]
    public void What_is_wrong_is_told(string expected, params string[] arguments)
    {
        ProgramRun run = ProgramRun.Of(arguments);

        Assert.Equal(2, run.Status);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("change", "--boat", "Heron", "--to-day", "2026-05-04")]
    [InlineData("change", "--boat", "Heron", "--to-crew", "women")]
    [InlineData("compare", "--boat", "Heron", "--with", "Merlin")]
    [InlineData("travel", "--boat", "Merlin")]
    public async Task A_file_says_the_same_as_the_club_that_it_is_recorded_in(string command, params string[] asked)
    {
        ClubPlace place = await stores.NewAsync();
        Assert.Equal(0, place.RecordNew(Fours).Status);

        // A club learns its odds from what it has checked; a file has learnt none.
        await place.AppendAsync("shed", Thing(Things.Settings, "chances", ("reset", "2026-06-01")));
        Assert.Equal(ProgramRun.Of([command, Fours, .. asked, "--json"]).Output, place.Run([command, .. asked, "--json"]).Output);
    }

    /// <summary>A rig kept under a name in a club, its riggers by their marks, and the shelf's last insert.</summary>
    [Fact]
    public async Task A_club_s_boat_is_changed_to_a_rig_that_it_keeps()
    {
        ClubPlace place = await stores.NewAsync();
        Assert.Equal(0, place.RecordNew(Fours).Status);
        string boat = (await place.ClubAsync("shed")).Subjects.Single(s => s.Thing == Things.Boat && s.Key.Contains("heron", StringComparison.OrdinalIgnoreCase)).Key;
        await place.AppendAsync(
            "shed",
            Thing(Things.Rigger, "r2", ("name", "H2"), ("boat", boat), ("seat", "2"), ("side", "port")),
            Thing(Things.Rigger, "r4", ("name", "H4"), ("boat", boat), ("seat", "4"), ("side", "port")),
            Thing(Things.Rig, "k1", ("name", "Regatta"), ("boat", boat), ("class", "4-"), ("rigger/2/port", "H4"), ("rigger/4/port", "H2"), ("spread/2", "85"), ("spread/4", "86.5")),
            new StockCounted("insert", 4, 0));

        ProgramRun run = place.Run("change", "--boat", "Heron", "--to", "regatta", "--json");

        Assert.True(run.Status == 1, run.Error);
        using var document = JsonDocument.Parse(run.Output);
        Assert.Equal(2, document.RootElement.GetProperty("riggersMoved").GetInt32());
        Assert.Equal(
            ["Take rigger H4 off seat 4 port and put it on seat 2 port.", "Take rigger H2 off seat 2 port and put it on seat 4 port."],
            document.RootElement.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("instruction").GetString()!));
        string back = place.Run("change", "--boat", "Heron", "--to-day", "2026-05-04", "--plain").Output;
        Assert.Contains("Not on the shelf: 1 × insert 4 degrees.", back, StringComparison.Ordinal);
        Assert.Contains("Rigger H2: seat 2 port.", place.Run("travel", "--boat", "Heron", "--plain").Output, StringComparison.Ordinal);
    }

    private static ThingSet Thing(string thing, string key, params (string Field, string? Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => f.Value));

    private static void Matches(string expectation, int status, params string[] arguments)
    {
        ProgramRun run = ProgramRun.Of(arguments);
        Assert.True(run.Status == status, run.Error);
        Expectation.Matches(expectation, run.Output);
    }
}
