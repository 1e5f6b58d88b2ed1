using System.Globalization;
using Bunit;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Tests.Round;

public sealed class RehearsalTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    public RehearsalTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Readings_that_nobody_takes_are_drawn_and_nothing_is_recorded()
    {
        await using ClubOfTwo club = await WithTealAsync();
        int before = club.InHand.Club.Count;

        bool isDrawn = false;
        IRenderedComponent<Rehearsal> rehearsal = club.Page.Render<Rehearsal>(p => p.Add(r => r.Round, "round").Add(r => r.Boat, "teal"));
        rehearsal.OnMarkupUpdated += (_, _) => isDrawn |= rehearsal.FindAll(".under .line").Count > 0;
        await rehearsal.WaitForStateAsync(() => rehearsal.Instance.IsOver, Patience);

        Assert.Empty(rehearsal.FindAll("*"));
        Assert.True(isDrawn);
        Assert.Equal(before, club.InHand.Club.Count);
    }

    [Fact]
    public async Task A_rehearsal_gives_way_to_whoever_taps_and_goes_on_afterwards()
    {
        await using ClubOfTwo club = await WithTealAsync();
        int drawn = 0;

        IRenderedComponent<Rehearsal> rehearsal = club.Page.Render<Rehearsal>(p => p.Add(r => r.Round, "round").Add(r => r.Boat, "teal"));
        rehearsal.OnMarkupUpdated += (_, _) => drawn += rehearsal.FindAll(".under .line").Count;
        club.InHand.Breath.Hold();
        int before = drawn;
        await Task.Delay(TimeSpan.FromMilliseconds(150), Xunit.TestContext.Current.CancellationToken);

        // Ten are drawn in all, a drawing is heard of more than once, and the one that was under way may be.
        Assert.InRange(drawn - before, 0, 4);
        await rehearsal.WaitForStateAsync(() => rehearsal.Instance.IsOver, Patience);
        Assert.InRange(drawn - before, 8, int.MaxValue);
    }

    /// <summary>What fails in a rehearsal is nobody's: so it is asked whether one comes to its end.</summary>
    [Fact]
    public async Task A_rehearsal_for_nobody_comes_to_its_end_and_is_held_once()
    {
        await using ClubOfTwo club = await WithTealAsync();
        var rehearsals = new Rehearsals(club.Page.Services, Microsoft.Extensions.Logging.Abstractions.NullLoggerFactory.Instance);

        await rehearsals.RehearseAsync("round", "teal");
        Assert.Equal(1, rehearsals.Finished);
        await rehearsals.RehearseAsync("round", "teal");
        Assert.Equal(1, rehearsals.Finished);
    }

    [Fact]
    public async Task Each_reading_comes_on_top_of_those_before_it_right_and_wrong_in_turn()
    {
        await using ClubOfTwo club = await WithTealAsync();
        var desk = new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null);

        RehearsedReading[] readings = [.. RehearsedReading.From(desk, 5)];

        Assert.Equal([1, 2, 3, 4, 5], readings.Select(r => r.Seen.Boat.Readings.Count));
        Assert.Equal([4m, 1m, 4m, 1m, 4m], readings.Select(r => r.Taken.Value));
        Assert.All(readings, r => Assert.NotNull(r.Seen.Verdict));
        Assert.Empty(desk.Walk.Boat.Readings);
    }

    private static async Task<ClubOfTwo> WithTealAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("round"));
        return club;
    }
}
