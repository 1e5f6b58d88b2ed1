using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using static Gatewright.Journal.Tests.Views.ChangesTests;

namespace Gatewright.Journal.Tests.Views;

/// <summary>What the pages of a boat and its gates are read from.</summary>
public sealed class GateViewTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);
    private static readonly GatePlace Bow = new(1, Side.Starboard);

    [Fact]
    public void Each_reading_says_whether_it_still_counts_and_why_not()
    {
        Club club = Of([
            On(May4, 1, Journals.Set("teal", "class", "2-")),
            .. Read(May4, 10, "a", 3),
            .. Read(May4.AddDays(2), 20, "b", 2),
            On(May4.AddDays(3), 30, new GateMended("teal", 1, Side.Starboard)),
            .. Read(May4.AddDays(4), 40, "c", 4),
            .. Read(May4.AddDays(5), 50, "d", 9),
            On(May4.AddDays(5), 60, new Retracted(Journals.Id(51))),
            .. Read(May4.AddDays(6), 70, "e", 4.5m),
            On(May4.AddDays(7), 80, new ReadingTaken("not here yet", "teal", ReadItem.Gate, 1, Side.Starboard, 4, Station.Abeam))]);

        IReadOnlyList<GateReading> readings = GateReadings.Of(club, new(club, "teal"), Bow, 1);

        Assert.Equal(
            ["4 Waits", "4.5 Counts", "9 TakenBack", "4 Older", "2 BeforeChange", "3 BeforeChange"],
            readings.Select(r => FormattableString.Invariant($"{r.Taken.Value} {r.Holds}")));
        Assert.Equal(May4.AddDays(6), readings[1].Day);
        Assert.Null(readings[0].Laid);
    }

    [Fact]
    public void What_counts_is_what_the_boat_is_judged_by()
    {
        Club club = Of([
            On(May4, 1, Journals.Set("teal", "class", "2-")),
            .. Enumerable.Range(0, 7).SelectMany(i => Read(May4.AddDays(i), 10 * (i + 1), $"l{i}", 4))]);

        var boat = new BoatView(club, "teal");

        BoatCheck check = boat.Record(MeasuringSettings.Default)!.Check(CheckSettings.Default);

        Assert.Equal(
            check.Readings.Readings.Select(r => r.Lie.Date).Order(),
            GateReadings.Of(club, boat, Bow, CheckSettings.Default.DaysCombined)
                .Where(r => r.Holds == ReadingHolds.Counts).Select(r => (DateOnly?)r.Day).Order());
    }

    [Fact]
    public void A_gates_history_pools_each_day_and_breaks_at_its_mend()
    {
        Club club = Of([
            On(May4, 1, Journals.Set("teal", "class", "2-")),
            .. Read(May4, 10, "a", 2),
            .. Read(May4, 20, "a2", 3),
            On(May4.AddDays(1), 30, new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", [], [], [], 1, Side.Starboard)),
            On(May4.AddDays(1), 31, new JobDone("j", Cause.GatePitch)),
            On(May4.AddDays(1), 32, new GateMended("teal", 2, Side.Port)),
            .. Read(May4.AddDays(1), 40, "b", 4)]);

        GateHistory history = GateHistory.Of(club, new(club, "teal"), Bow, MeasuringSettings.Default);

        Assert.Equal([May4.AddDays(1)], history.Mends);
        Assert.Equal([(May4, 2, true), (May4.AddDays(1), 1, false)], history.Days.Select(d => (d.Day, d.Repeats, d.IsBeforeChange)));

        // Two readings alike in all but their value pool to the middle, as level boats need no correction.
        Assert.Equal(2.5, history.Days[0].Pitch.Value.Degrees, 1e-9);
        Assert.Equal(Station.Abeam, history.Days[0].At.Station);

        // The club standard abeam: 3 to 5, floor 2.
        Assert.Equal(
            [Verdict.Adjust, Verdict.Good],
            history.Days.Select(d => d.Judged(Standard.Club, DecisionRule.Default with { AboveFloorForGood = 0.8 })));
        Assert.Equal(Verdict.Stop, (history.Days[0] with { Pitch = Estimate.FromDegrees(1.9, 0.3) }).Judged(Standard.Club, DecisionRule.Default));
    }

    [Fact]
    public void Reports_are_open_until_their_gate_is_mended_and_holds_until_they_are_lifted()
    {
        Club club = Of(
            On(May4, 1, new Held("teal", "crab")),
            On(May4.AddDays(1), 2, new Reported("teal", ReportKind.Knock, 1, Side.Starboard, Date: May4.AddDays(-3))),
            On(May4.AddDays(2), 3, new Released("teal", "looked at")),
            On(May4.AddDays(3), 4, new Held("teal", "again")),
            On(May4.AddDays(4), 5, new Reported("teal", ReportKind.CrabEarly, 2, Side.Port)),
            On(May4.AddDays(5), 6, new GateMended("teal", 1, Side.Starboard)),
            On(May4.AddDays(6), 7, new JobPlanned("j", "teal", Cause.PinOut, "x", [], [], [], 2, Side.Port)));

        Assert.Equal(
            ["job-planned open", "mended", "report open", "hold open", "release", "hold", "report"],
            BoatIncidents.Of(new(club, "teal")).Select(i => i.Record.Entry.Kind + (i.IsOpen ? " open" : "")));
        Assert.Equal(May4.AddDays(-3), BoatIncidents.Of(new(club, "teal"))[^1].Day);
    }

    [Fact]
    public void A_boats_own_journal_judges_it_as_the_whole_clubs_does()
    {
        Recorded[] all =
        [
            On(May4, 1, Journals.Set("teal", "class", "2-")),
            On(May4, 2, new RackLevelRead("A", 0.5m, 0.2m)),
            On(May4, 3, new GaugeReversed("g", 4.2m, 4)),
            On(May4, 4, new ThingSet(Things.Standard, "club", new Dictionary<string, string?> { ["catch-lowest"] = "3.5" })),
            On(May4, 5, new BoatLaid("l", "teal", Lie.Inverted, LevelBasis.Rack, Rack: "A")),
            On(May4, 6, new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 3, Station.Catch, Gauge: "g")),
            On(May4, 7, new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4, Station.Catch, Gauge: "g")),
            On(May4, 8, new Retracted(Journals.Id(7))),
            On(May4, 9, Journals.Set("heron", "class", "8+")),
            On(May4, 10, new RackLevelRead("B", 1, 1)),
        ];
        Club whole = Of(all);

        Club own = BoatJournal.Of(whole, "teal");

        Assert.Equal(8, own.Count);
        Assert.Equal(Told(whole), Told(own));

        static string Told(Club club)
        {
            var view = new BoatView(club, "teal");
            CheckSettings settings = CheckSettings.Default with { Standard = ClubSettings.Of(club, view) };
            BoatCheck check = view.Record(MeasuringSettings.Default)!.Check(settings);
            return $"{check.Verdict.Verdict} {check.Corrected.Pitches.Single().Estimate} {check.Verdict.Standard.Catch.Lowest.Degrees}";
        }
    }

    [Fact]
    public void A_boat_on_a_day_is_judged_by_what_was_true_then_and_what_came_since_is_told()
    {
        Club club = Of([
            On(May4, 1, Journals.Set("teal", "class", "2-")),
            .. Read(May4, 10, "a", 4),
            On(May4.AddDays(3), 20, new Held("teal", "crab")),
            .. Read(May4.AddDays(3), 30, "b", 0),
            On(May4.AddDays(4), 40, Journals.Set("heron", "rack", "A"))]);

        BoatOnDay then = BoatOnDay.Of(club, "teal", May4.AddDays(1), May4.AddDays(9), CheckSettings.Default);

        Assert.Equal(("good", false), (then.Standing!.Word, then.Standing.StaysAshore));
        ThingChange change = Assert.Single(then.Since);
        Assert.Equal((1, "hold"), (change.Readings, Assert.Single(change.Facts).Entry.Kind));
        Assert.Null(BoatOnDay.Of(club, "teal", May4.AddDays(-1), May4.AddDays(9), CheckSettings.Default).Standing);
        Assert.Empty(BoatOnDay.Of(club, "teal", May4, May4, CheckSettings.Default).Since);
    }

    [Fact]
    public void Notes_on_a_boat_and_on_its_gates_stand_together_each_with_its_place()
    {
        Club club = Of(
            On(May4, 1, new Noted(Things.Boat, "teal", "new stretcher")),
            On(May4, 2, new Noted(Things.Gate, "teal/1/starboard", "keeper is worn")),
            On(May4, 3, new Noted(Things.Gate, "teal2/1/starboard", "another boat's")),
            On(May4, 4, new Noted(Things.Seat, "teal/2", "slide sticks")),
            On(May4, 5, new Noted(Things.Boat, "teal", "taken back")),
            On(May4, 6, new Retracted(Journals.Id(5))));

        IReadOnlyList<Remark> remarks = BoatRemarks.Of(club, "teal");

        Assert.Equal(["slide sticks", "keeper is worn", "new stretcher"], remarks.Select(r => ((Noted)r.Record.Fact).Text));
        Assert.Equal([null, Bow, null], remarks.Select(r => r.Gate));
        Assert.Equal(3, BoatRemarks.Of(BoatJournal.Of(club, "teal"), "teal").Count);
    }

    [Fact]
    public void A_boat_was_of_its_class_before_anybody_told_so()
    {
        Club club = Of([
            On(May4.AddDays(9), 1, Journals.Set("teal", "class", "2-")),
            On(May4.AddDays(9), 2, new BoatLaid("a", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: May4)),
            On(May4.AddDays(9), 3, new ReadingTaken("a", "teal", ReadItem.Gate, 1, Side.Starboard, 4, Station.Abeam))]);

        Assert.Equal("good", BoatOnDay.Of(club, "teal", May4, May4.AddDays(9), CheckSettings.Default).Standing!.Word);
        Assert.Null(BoatOnDay.Of(club, "teal", May4.AddDays(-1), May4.AddDays(9), CheckSettings.Default).Standing);
    }

    /// <summary>A level boat, and bow's gate read abeam: entries with two numbers from one on.</summary>
    private static Recorded[] Read(DateOnly day, int number, string lying, decimal value) =>
    [
        On(day, number, new BoatLaid(lying, "teal", Lie.Upright, LevelBasis.Read, 0, 0)),
        On(day, number + 1, new ReadingTaken(lying, "teal", ReadItem.Gate, 1, Side.Starboard, value, Station.Abeam)),
    ];
}
