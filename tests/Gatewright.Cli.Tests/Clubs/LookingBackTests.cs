using System.Text.Json;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>What changed, and how a boat stood on a day.</summary>
public sealed class LookingBackTests(ClubStores stores)
{
    private static string Today => DateTimeOffset.UtcNow.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public async Task What_was_true_on_a_day_is_told_of_that_day_with_who_said_so()
    {
        ClubPlace place = await TealAsync();
        string of2026 = place.Run("club", "changes", "--from", "2026-03-01", "--to", "2026-03-05", "--plain").Output;
        Assert.Contains("Boat Teal: reported at seat 1 port: knock, by a launch (lee, 2026-03-04).", of2026, StringComparison.Ordinal);
        Assert.Contains("Boat Teal: mended at seat 1 port (lee, 2026-03-05).", of2026, StringComparison.Ordinal);
        Assert.DoesNotContain("held", of2026, StringComparison.Ordinal);
        Assert.Contains(
            "nothing changed from 2026-03-06 to 2026-03-07", place.Run("club", "changes", "--from", "2026-03-06", "--to", "2026-03-07", "--plain").Output, StringComparison.Ordinal);

        string today = place.Run("club", "changes", "--from", Today, "--plain").Output;
        Assert.Contains($"Boat Teal: class: 1x, was nothing, set by kim on {Today}.", today, StringComparison.Ordinal);
        Assert.Contains($"Boat Teal: gate teal/1/port, insert: 4.5, was nothing, set by lee on {Today}.", today, StringComparison.Ordinal);
        Assert.Contains($"Boat Teal: held: loose stretcher (lee, {Today}).", today, StringComparison.Ordinal);
        Assert.Contains("Boat Teal: 6 readings.", today, StringComparison.Ordinal);
        Assert.DoesNotContain("launch", today, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_boat_is_told_as_it_stood_at_the_end_of_the_day()
    {
        ClubPlace place = await TealAsync();
        using var today = JsonDocument.Parse(place.Run("club", "day", Today, "--boat", "TEAL", "--json").Output);
        JsonElement boat = today.RootElement;
        Assert.Equal(6, boat.GetProperty("readings").GetInt32());
        Assert.Equal("loose stretcher", boat.GetProperty("holds")[0].GetProperty("words").GetString()!["held: ".Length..]);
        Assert.Contains(boat.GetProperty("fields").EnumerateArray(), f =>
            f.GetProperty("field").GetString() == "insert" && f.GetProperty("value").GetString() == "4.5" && f.GetProperty("member").GetString() == "lee");
        Assert.Contains(
            "Teal at the end of 2026-03-01: nothing is on record of it by then.",
            place.Run("club", "day", "2026-03-01", "--boat", "Teal", "--plain").Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_boat_held_in_another_language_is_held_for_an_English_sentence()
    {
        ClubPlace place = await TealAsync();
        await place.AppendAsync("shed", new Held("teal", "Ein Stoß", new Dictionary<string, string> { ["en"] = "A knock" }));

        Assert.Contains($"Boat Teal: held: A knock (lee, {Today}).", place.Run("club", "changes", "--from", Today, "--plain").Output, StringComparison.Ordinal);
        Assert.Contains("held by member lee: A knock.", place.Run("check", "--plain").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--boat: 'Rail' is none of the club's boats: Teal.", "club", "day", "2026-03-01", "--boat", "Rail")]
    [InlineData("'1.3.2026' is not a day as 2026-11-25", "club", "day", "1.3.2026", "--boat", "Teal")]
    [InlineData("the last day is before the first", "club", "changes", "--from", "2026-03-02", "--to", "2026-03-01")]
    public async Task What_is_wrong_is_told(string message, params string[] command)
    {
        ClubPlace place = await TealAsync();
        ProgramRun run = place.Run(command);
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
    }

    private async Task<ClubPlace> TealAsync()
    {
        ClubPlace place = await stores.NewAsync();
        using var file = new TemporaryFile([Readings.Single("Teal").TrimEnd()]);
        Assert.Equal(0, place.RecordNew(file.Path).Status);
        await place.AppendAsync(
            "shed",
            new Reported("teal", ReportKind.Knock, 1, Side.Port, "by a launch", new(2026, 3, 4)),
            new GateMended("teal", 1, Side.Port, new(2026, 3, 5)),
            new ThingSet(Things.Gate, "teal/1/port", new Dictionary<string, string?> { ["insert"] = "4.5" }),
            new Held("teal", "loose stretcher"));
        return place;
    }
}
