using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Changing;

/// <summary>Rigs of a boat from its journal, rigs kept under a name, and what goes on record when a change is done.</summary>
public sealed class RigOnRecordTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);
    private static readonly DateOnly June1 = new(2026, 6, 1);

    [Fact]
    public void A_rig_of_a_day_is_what_had_been_taken_by_then()
    {
        Club club = Pair();

        RigOfBoat then = On(club, May4)!;
        RigOfBoat now = On(club, null)!;

        Assert.Equal(86, then.Find(RigItem.Spread, new(2, null))!.Value.Value);
        Assert.Equal(87, now.Find(RigItem.Spread, new(2, null))!.Value.Value);
        ComparedItem spread = RigComparison.Of(then, now, isSameBoat: true).Items.Single(i => i.Item == RigItem.Spread && i.Place.Seat == 2);
        Assert.Equal(ComparedAs.Differs, spread.As);
        Assert.Equal(
            ComparedAs.NotTakenSince,
            RigComparison.Of(then, now, isSameBoat: true).Items.Single(i => i.Item == RigItem.Spread && i.Place.Seat == 1).As);
    }

    /// <remarks>A gate that shows 4.5 abeam on a level boat is 4.5 there: no prior about gates touches a reading.</remarks>
    [Fact]
    public void Its_pitch_is_what_was_read()
    {
        RigValue pitch = On(Pair(), null)!.Find(RigItem.PitchAbeam, new(2, Side.Port))!;

        Assert.Equal((4.5, true, May4), (Math.Round(pitch.Value.Value, 6), pitch.IsRead, pitch.Day!.Value));
        Assert.False(On(Pair(), null)!.Find(RigItem.PitchCatch, new(2, Side.Port))!.IsRead);
    }

    [Fact]
    public void Riggers_oars_and_inserts_are_found_at_their_gates()
    {
        RigOfBoat rig = On(Pair(), null)!;

        Assert.Equal("A2", rig.Rigger(new(2, Side.Port)));
        Assert.Equal("A1", rig.Rigger(new(1, Side.Starboard)));
        Assert.Equal("blue 7", rig.Oar(new(1, Side.Starboard)));
        Assert.Equal(5, rig.Inserts[new(2, Side.Port)]);
    }

    [Fact]
    public void A_rig_kept_under_a_name_is_come_back_to()
    {
        Club club = Pair();
        IReadOnlyList<Fact> facts = KeptRigs.Keep("k1", "Sprint", "teal", On(club, May4)!, "women");
        Club with = Of([.. club.All().Select(r => r.Fact), .. facts]);

        KeptRig kept = Assert.Single(KeptRigs.For(with, "teal", BoatClass.Parse("2-")));
        TargetRig target = KeptRigs.Target(with, kept, "teal", On(with, null)!.Gates);
        ChangePlan plan = ChangePlan.Of(On(with, null)!, target, ChangeSettings.Default);

        Assert.Equal(("Sprint", "women"), (kept.Name, kept.Crew));
        ChangeStep step = Assert.Single(plan.Steps);
        Assert.Equal((RigItem.Spread, 2, 86.0), (step.Item!.Value, step.Place.Seat, step.After!.Value.Value));
        Assert.Empty(KeptRigs.All(Of([.. with.All().Select(r => r.Fact), KeptRigs.Drop("k1")])));
    }

    /// <remarks>Of 86.8 ± 0.3 against 86 ± 0.3 nobody can tell whether it is more than 0.5 off; of an aim that somebody wrote down one could.</remarks>
    [Fact]
    public void A_kept_rig_keeps_how_well_it_was_known_and_an_older_one_is_still_read()
    {
        var place = new RigPlace(2, null);
        RigOfBoat was = On(Pair(), null)! with { Values = [new(RigItem.Spread, place, new(86, 0.3))] };
        var set = (ThingSet)KeptRigs.Keep("k1", "Sprint", "teal", was, null).Single();
        ThingSet older = set with { Fields = set.Fields.Where(f => f.Key != "u/spread/2").ToDictionary() };

        Assert.Equal((86, 0.3), Aim(set));
        Assert.Equal((86, 0), Aim(older));

        (double, double) Aim(ThingSet kept)
        {
            Club club = Of([.. Pair().All().Select(r => r.Fact), kept]);
            RigAim aim = Assert.Single(KeptRigs.Target(club, KeptRigs.All(club).Single(), "teal", was.Gates).Aims);
            return (aim.Value, aim.U);
        }
    }

    /// <summary>The largest boat with everything of it known still goes into entries that the journal takes.</summary>
    [Fact]
    public void An_eight_of_scullers_is_kept_in_entries_of_a_hundred_fields_at_most()
    {
        GatePlace[] gates = [.. Enumerable.Range(1, 8).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })];
        var rig = RigOfBoat.Of("Osprey", BoatClass.Parse("8x+"), gates, [.. RigItems.All.SelectMany(item =>
            gates.Select(g => new RigPlace(g.Seat, item.HasSide() ? g.Side : null)).Distinct().Select(p => new RigValue(item, p, new(10, 0.1))))]);

        IReadOnlyList<Fact> facts = KeptRigs.Keep("k", "All", "osprey", rig, null);

        Assert.All(facts, f => Assert.InRange(((ThingSet)f).Fields.Count, 1, EntryRules.MostItems));
        Assert.All(facts, f => Assert.Empty(EntryRules.Problems(Journals.Entry(0, f, 1).Entry)));
    }

    [Fact]
    public void Riggers_that_took_each_other_s_places_are_found_there()
    {
        Club club = Pair();
        RigOfBoat now = On(club, null)!;
        var target = new TargetRig("stroke on starboard", [new(1, Side.Port), new(2, Side.Starboard)], [], [], []);
        ChangePlan plan = ChangePlan.Of(now, target, ChangeSettings.Default);

        ChangePlanned kept = ChangeToKeep.Of("c", club, "teal", plan, Wording.English);
        Club after = Of([.. club.All().Select(r => r.Fact), .. Enumerable.Range(0, kept.Steps.Count).SelectMany(i => DoneSteps.Facts(club, kept, i))]);
        RigOfBoat rig = On(after, null)!;

        Assert.Equal(target.Gates, rig.Gates);
        Assert.Equal("A2", rig.Rigger(new(1, Side.Port)));
        Assert.Equal("A1", rig.Rigger(new(2, Side.Starboard)));
    }

    private static RigOfBoat? On(Club club, DateOnly? day) => RigOnRecord.On(club, "teal", day, CheckSettings.Default, "Teal");

    private static Club Pair() => Of(
        [
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new ThingSet(Things.Rigger, "r1", new Dictionary<string, string?> { ["name"] = "A1", ["boat"] = "teal", ["seat"] = "1" }),
            new ThingSet(Things.Rigger, "r2", new Dictionary<string, string?> { ["name"] = "A2", ["boat"] = "teal", ["seat"] = "2", ["side"] = "port" }),
            new ThingSet(Things.Oar, "o1", new Dictionary<string, string?> { ["name"] = "blue 7", ["boat"] = "teal", ["seat"] = "1", ["side"] = "starboard" }),
            new ThingSet(Things.Gate, "teal/2/port", new Dictionary<string, string?> { ["insert"] = "5" }),
            new MeasureTaken("teal", "spread", 1, 86, "cm", Date: May4),
            new MeasureTaken("teal", "spread", 2, 86, "cm", Date: May4),
            new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: May4),
            new ReadingTaken("l1", "teal", ReadItem.Gate, 2, Side.Port, 4.5m, Station.Abeam),
            new ReadingTaken("l1", "teal", ReadItem.Gate, 1, Side.Starboard, 4m, Station.Abeam),
            new MeasureTaken("teal", "spread", 2, 87, "cm", Date: June1),
        ]);

    private static Club Of(params Fact[] facts) => Club.Empty(Journals.Club).With(
        facts.Select((f, i) => Journals.Entry(i, f, new DateTimeOffset(2026, 6, 2, 8, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds() + i)));
}
