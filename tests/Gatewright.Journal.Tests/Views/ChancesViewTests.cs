using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using static Gatewright.Journal.Tests.Views.ChangesTests;

namespace Gatewright.Journal.Tests.Views;

public sealed class ChancesViewTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);

    [Fact]
    public void Finished_jobs_and_what_was_read_are_counted()
    {
        FoundCauses found = new ChancesView(Of(
            On(May4, 1, new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Round: "r1")),
            On(May4, 2, new BoatLaid("l2", "teal", Lie.Upright, LevelBasis.ByEye)),
            On(May4, 3, Reading("l1", 1, Side.Port)),
            On(May4, 4, Reading("l1", 1, Side.Port, Station.Finish)),
            On(May4, 5, Reading("l1", 1, Side.Starboard)),
            On(May4, 6, Reading("l2", 1, Side.Port)),
            On(May4, 7, new ReadingTaken("l1", "teal", ReadItem.Sleeve, 1, Side.Port, 0)),
            On(May4, 8, new GaugeReversed("g1", 2, -2)),
            On(May4, 9, new JobDone("j1", Cause.GatePitch)),
            On(May4, 10, new JobDone("j2")),
            On(May4, 11, new JobDone("j3", Cause.PinOut)),
            On(May4, 12, new Retracted(Journals.Id(11))),
            On(May4.AddDays(7), 13, new BoatLaid("l3", "teal", Lie.Upright, LevelBasis.Read, 0, 0)),
            On(May4.AddDays(7), 14, Reading("l3", 1, Side.Port)),
            On(May4.AddDays(7), 15, Reading("l3", 1, Side.Starboard)),
            On(May4.AddDays(7), 16, new ReadingTaken("l3", "teal", ReadItem.Sleeve, 1, Side.Port, 0)))).Found;

        // Port in the round, once more outside it and a week later, starboard in the round and a week later: of each but the last.
        Assert.Equal(new() { GatesChecked = 3, GatePitch = 1, OarsChecked = 1, BoatsChecked = 1, GaugesChecked = 1 }, found);
    }

    [Fact]
    public void Two_faults_of_one_gate_are_each_counted()
    {
        FoundCauses found = new ChancesView(Of(On(May4, 1, JobDone.Of("j1", [Cause.PinAft, Cause.GatePitch])))).Found;

        // One gate, at which both were found.
        Assert.Equal(new() { GatesChecked = 1, GatePitch = 1, PinAft = 1 }, found);
    }

    [Fact]
    public async Task What_has_grown_is_counted_as_if_it_were_counted_anew()
    {
        Fact[] facts =
        [
            new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Round: "r1"), Reading("l1", 1, Side.Port),
            new BoatLaid("l2", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Round: "r2"), Reading("l2", 1, Side.Port),
            new GaugeReversed("g1", 2, -2), new Retracted(Journals.Id(4)), new Retracted(Journals.Id(6)),
            new JobDone("j1", Cause.GatePitch), new BoatLaid("l3", "heron", Lie.Upright, LevelBasis.ByEye),
            new ThingSet(Things.Settings, "chances", new Dictionary<string, string?> { ["reset"] = "yes" }),
            new JobDone("j2", Cause.Sleeve), Reading("l3", 2, Side.Starboard), new Retracted(Journals.Id(10)),
        ];
        Recorded[] records = [.. facts.Select((fact, i) => On(May4.AddDays(i), i + 1, fact))];
        Club club = Club.Empty(Journals.Club);
        ChancesView? kept = null;
        ChancesView? slowly = null;
        List<FoundCauses> found = [];
        foreach (Recorded record in records)
        {
            club = club.With(record);
            kept = new(club, kept);
            slowly = await ChancesView.OfAsync(club, slowly, () => ValueTask.CompletedTask);
            found.Add(new ChancesView(club).Found);
            Assert.Equal(found[^1], kept.Found);
            Assert.Equal(found[^1], slowly.Found);
        }

        // Each kind of change is seen: what is found, what is taken back, and taken back again, what a reset forgets.
        Assert.True(found.Distinct().Count() > 5);
    }

    [Fact]
    public void What_was_looked_at_once_has_taught_nothing_yet()
    {
        FoundCauses found = new ChancesView(Of(
            On(May4, 1, new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.Read, 0, 0)),
            On(May4, 2, Reading("l1", 1, Side.Port)),
            On(May4, 3, new ReadingTaken("l1", "teal", ReadItem.Sleeve, 1, Side.Port, 0)))).Found;

        Assert.Equal(new(), found);
    }

    [Fact]
    public void What_was_before_a_reset_no_longer_counts()
    {
        ChancesView view = new(Of(
            On(May4, 1, new JobDone("j1", Cause.GatePitch)),
            On(May4, 2, new ThingSet(Things.Settings, "chances", new Dictionary<string, string?> { ["reset"] = "yes" })),
            On(May4, 3, new JobDone("j2", Cause.PinAft))));
        Assert.Equal(new() { GatesChecked = 1, PinAft = 1 }, view.Found);

        // (400 × 0.015 + 1)/(400 + 1): docs of PriorChances.After.
        Assert.Equal(0.0174563591, view.After(PriorChances.Default).PinAft, 1e-9);
    }

    [Fact]
    public void Without_a_journal_the_chances_are_as_they_were() =>
        Assert.Equal(PriorChances.Default, new ChancesView(Club.Empty(Journals.Club)).After(PriorChances.Default));

    [Fact]
    public void A_standard_of_the_clubs_own_is_built_on_the_common_one()
    {
        Club club = Of(
            On(May4, 1, Standard("novices", ("name", "Novices"), ("catch-lowest", "3.5"), ("largest-drop", "2"))),
            On(May4, 2, Standard("race", ("catch-highest", "4.25"))),
            On(May4, 3, Standard("upside-down", ("catch-lowest", "9"))));

        IReadOnlyDictionary<string, Standard> standards = StandardsView.Of(club);

        Assert.Equal(["club", "novices", "race"], standards.Keys.Order());
        Assert.Equal(
            Core.Judging.Standard.Club with { Name = "Novices", Catch = StationLimits.FromDegrees(3.5, 5, 2), LargestDrop = Core.Geometry.Angle.FromDegrees(2) },
            standards["novices"]);
        Assert.Equal(Core.Judging.Standard.Race with { Catch = StationLimits.FromDegrees(3.5, 4.25, 2) }, standards["race"]);
        Assert.Equal(Core.Judging.Standard.Club, StandardsView.For(club, null));
        Assert.Equal(Core.Judging.Standard.Club, StandardsView.For(club, "upside-down"));
        Assert.Equal("Novices", StandardsView.For(club, "novices").Name);
    }

    private static ThingSet Standard(string key, params (string Field, string Value)[] fields) =>
        new(Things.Standard, key, fields.ToDictionary(f => f.Field, f => (string?)f.Value));

    private static ReadingTaken Reading(string lying, int seat, Side side, Station station = Station.Catch) =>
        new(lying, "teal", ReadItem.Gate, seat, side, 4, station);
}
