using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

public sealed class ChangesTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);

    [Fact]
    public void What_changed_between_two_days_stands_by_thing_with_who_and_from_what()
    {
        Club club = Of(
            On(May4, 1, Journals.Set("heron", "rack", "A")),
            On(May4.AddDays(1), 2, Journals.Set("heron", "rack", "B")),
            On(May4.AddDays(2), 3, Journals.Set("heron", "rack", "C")),
            On(May4.AddDays(1), 4, new ThingSet(Things.Gate, "heron/3/port", new Dictionary<string, string?> { ["insert"] = "4" })),
            On(May4.AddDays(1), 5, new Held("teal", "crab at seat 1")),
            On(May4.AddDays(1), 6, new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.ByEye)),
            On(May4.AddDays(1), 7, new ReadingTaken("l1", "teal", ReadItem.Gate, 1, Side.Port, 4)),
            On(May4.AddDays(1), 8, new JobPlanned("j1", "teal", Cause.PinAft, "x", [], [], [])),
            On(May4.AddDays(1), 9, new JobDone("j1", Cause.PinAft)),
            On(May4.AddDays(3), 10, new Held("teal", "another day")));

        IReadOnlyList<ThingChange> changes = Changes.Between(club, May4, May4.AddDays(2));

        Assert.Equal(["heron", "teal"], changes.Select(c => c.About.Key));
        Assert.Equal(
            ["boat heron rack: A to C by m1", "gate heron/3/port insert:  to 4 by m1"],
            changes[0].Fields.Select(f => $"{f.Thing} {f.Key} {f.Field}: {f.From} to {f.To?.Value} by {f.To?.Entry.Member}"));
        Assert.Equal(1, changes[1].Readings);
        Assert.Equal(["hold", "job-planned", "job-done"], changes[1].Facts.Select(r => r.Entry.Kind));
    }

    [Fact]
    public void Where_a_day_is_stated_it_counts_and_not_the_day_of_recording()
    {
        Club club = Of(
            On(May4.AddDays(9), 1, new Reported("teal", ReportKind.Knock, 1, Side.Port, Date: May4)),
            On(May4.AddDays(9), 2, new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.ByEye, Date: May4)),
            On(May4.AddDays(9), 3, new ReadingTaken("l1", "teal", ReadItem.Gate, 1, Side.Port, 4)));

        Assert.Equal(1, Assert.Single(Changes.Between(club, May4.AddDays(-1), May4)).Readings);
        Assert.Empty(Changes.Between(club, May4, May4.AddDays(20)));
    }

    [Fact]
    public void What_was_taken_back_since_never_was()
    {
        Club club = Of(
            On(May4, 1, Journals.Set("heron", "rack", "A")),
            On(May4.AddDays(1), 2, Journals.Set("heron", "rack", "B")),
            On(May4.AddDays(5), 3, new Retracted(Journals.Id(2))));

        Assert.Empty(Changes.Between(club, May4, May4.AddDays(2)));
        Assert.Equal("A", new BoatView(ClubOnDay.Of(club, May4.AddDays(2)), "heron").Properties["rack"]);
        Assert.Equal("B", new BoatView(club.AsOf(Instant(May4.AddDays(2))), "heron").Properties["rack"]);
    }

    [Fact]
    public void A_field_says_who_said_so()
    {
        Club club = Of(On(May4, 1, Journals.Set("heron", "rack", "A")), On(May4, 2, Journals.Set("heron", "rack", "B")));
        FieldValue holding = new BoatView(club, "heron").Properties.Holding("rack")!;
        Assert.Equal(("B", Journals.Id(2), "m1", true), (holding.Value, holding.Entry.Id, holding.Entry.Member, holding.Holds));
        Assert.Null(new BoatView(club, "heron").Properties.Holding("name"));
    }

    internal static Club Of(params Recorded[] records) => Club.Empty(Journals.Club).With(records);

    internal static Recorded On(DateOnly day, int number, Fact fact) =>
        Journals.Entry(number, fact, Instant(day).ToUnixTimeMilliseconds(), number);

    private static DateTimeOffset Instant(DateOnly day) => new(day, new(12, 0), TimeSpan.Zero);
}
