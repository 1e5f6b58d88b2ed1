using System.Text.Json;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Core;
using Gatewright.Journal.Facts;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>What a club adds to what files say: holds, standards, boats out of use.</summary>
public sealed class CheckOfAClubTests(ClubStores stores)
{
    [Fact]
    public async Task A_boat_that_is_held_is_told_with_who_when_and_why_and_needs_attention()
    {
        ClubPlace place = await SinglesAsync("Teal", "Rail");
        Assert.Equal(0, place.Run("check").Status);
        await place.AppendAsync("shed", new Held("teal", "the bow ball is loose"));
        ProgramRun run = place.Run("check", "--plain");

        Assert.Equal(1, run.Status);
        Assert.Contains(
            $"'Teal' stays ashore since {DateTimeOffset.UtcNow:yyyy-MM-dd}, held by member lee: the bow ball is loose.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Held ashore, whatever the gates read: Teal.", run.Output, StringComparison.Ordinal);
        Assert.Matches(@"\n held +Held ashore, whatever the gates read: Teal\n", place.Run("check").Output);
        Assert.Equal(0, place.Run("check", "--boat", "rail").Status);
        await place.AppendAsync("shed", new Released("teal", "screwed tight"));
        Assert.Equal(0, place.Run("check").Status);
    }

    /// <summary>Its verdict is of the gates that were read since; what was read before keeps it ashore until it is read again.</summary>
    [Theory]
    [InlineData(4, false, "is to be read again")]
    [InlineData(0, true, "stays ashore until it is read again, by what was read before")]
    public async Task A_gate_that_was_changed_since_it_was_read_is_told_and_needs_attention(double port, bool staysAshore, string says)
    {
        ClubPlace place = await stores.NewAsync();
        string[] rows = [.. Readings.Single("Teal").TrimEnd().Split('\n').Select(row => row.Replace("port,catch,4.0", $"port,catch,{port:0.0}", StringComparison.Ordinal))];
        using var file = new TemporaryFile(rows);
        Assert.Equal(0, place.RecordNew(file.Path).Status);
        await place.AppendAsync("shed", new GateMended("teal", 1, Side.Port));

        ProgramRun run = place.Run("check", "--plain");
        Assert.Equal(1, run.Status);
        Assert.Contains($"'Teal' {says}: seat 1 port was mended on {DateTimeOffset.UtcNow:yyyy-MM-dd} and not read since", run.Output, StringComparison.Ordinal);
        Assert.Equal(staysAshore, run.Output.Contains("Treat as stop until read again: Teal", StringComparison.Ordinal));

        string json = place.Run("check", "--json").Output;
        new SchemaFile("docs/check.schema.json").AssertValid(json);
        using var document = JsonDocument.Parse(json);
        JsonElement boat = document.RootElement.GetProperty("boats")[0];
        Assert.Equal(("good", staysAshore), (boat.GetProperty("verdict").GetString(), boat.GetProperty("staysAshore").GetBoolean()));
        Assert.Equal("mending", boat.GetProperty("changed")[0].GetProperty("by").GetString());
    }

    [Fact]
    public async Task A_boat_is_judged_by_its_own_standard_unless_another_is_asked_for()
    {
        ClubPlace place = await SinglesAsync("Teal", "Rail");
        await place.AppendAsync(
            "shed",
            Set(Things.Standard, "low", ("name", "low water"), ("abeam-highest", "3"), ("abeam-lowest", "2"), ("catch-highest", "3"), ("catch-lowest", "2"), ("finish-highest", "3"), ("finish-lowest", "2")),
            Set(Things.Boat, "teal", ("standard", "low")));
        ProgramRun own = place.Run("check", "--plain");
        Assert.Equal(1, own.Status);
        Assert.Contains("Teal: Judged by the standard low water", own.Output, StringComparison.Ordinal);
        Assert.Contains("Boat Rail, class 1x: good.", own.Output, StringComparison.Ordinal);
        Assert.Equal(0, place.Run("check", "--standard", "club").Status);
        Assert.Contains("Boat Rail, class 1x: adjust.", place.Run("check", "--plain", "--standard", "low water").Output, StringComparison.Ordinal);
        await place.AppendAsync("shed", Set(Things.Settings, "club", ("standard", "low")));
        Assert.Contains("Boat Rail, class 1x: adjust.", place.Run("check", "--plain").Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_boat_out_of_use_is_left_out_and_one_never_read_is_told_of()
    {
        ClubPlace place = await SinglesAsync("Teal", "Rail");
        await place.AppendAsync("shed", Set(Things.Boat, "teal", ("out-of-use", "yes")), Set(Things.Boat, "new", ("name", "Wren"), ("class", "2x")));
        ProgramRun run = place.Run("check", "--plain");
        Assert.Equal(1, run.Status);
        Assert.DoesNotContain("Teal", run.Output, StringComparison.Ordinal);
        Assert.Contains("'Wren' was never read.", run.Output, StringComparison.Ordinal);
        Assert.Equal(2, place.Run("check", "--boat", "Teal").Status);
    }

    [Fact]
    public async Task A_shelf_below_nothing_is_taken_as_bare_and_told_of()
    {
        ClubPlace place = await SinglesAsync("Teal");
        await place.AppendAsync("shed", new StockChanged("shim", 0.5m, -2));
        Assert.Contains("'shim 0.5 mm' 2 more went out than came in", place.Run("mend", "--plain").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("mend")]
    public async Task Files_and_a_club_exclude_each_other(string command)
    {
        ClubPlace place = await SinglesAsync("Teal");
        ProgramRun run = place.Run(command, ExampleFiles.Small);
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.StartsWith("FILE and a club in a store exclude each other", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("mend")]
    public async Task Where_there_is_no_store_it_ends_with_74_and_makes_none(string command)
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = place.Run(command);
        Assert.Equal((74, string.Empty), (run.Status, run.Output));
        Assert.StartsWith($"There is no store in {place.Name}. Name the folder", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(place.Name));
    }

    [Fact]
    public async Task Of_several_clubs_one_has_to_be_named()
    {
        ClubPlace place = await SinglesAsync("Teal");
        place.RecordNew(ExampleFiles.Small, "other");
        ProgramRun run = place.Run("check");
        Assert.Equal(2, run.Status);
        Assert.Contains("They are other (The shed), shed (The shed).", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, place.Run("check", "--club", "shed").Status);
        Assert.Contains("--club: 'sheds' is no club of the store", place.Run("check", "--club", "sheds").Error, StringComparison.Ordinal);
    }

    private static ThingSet Set(string thing, string key, params (string Field, string Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => (string?)f.Value));

    private async Task<ClubPlace> SinglesAsync(params string[] boats)
    {
        ClubPlace place = await stores.NewAsync();
        foreach (string boat in boats)
        {
            using var file = new TemporaryFile([Readings.Single(boat).TrimEnd()]);
            Assert.Equal(0, place.RecordNew(file.Path).Status);
        }

        return place;
    }
}
