using FsCheck.Xunit;
using Gatewright.Core.Changing;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

public class ChangePlanTests
{
    private static readonly RigPlace SeatTwo = new(2, null);
    private static readonly RigPlace TwoPort = new(2, Side.Port);

    [Fact]
    public void A_rig_that_is_as_it_should_be_is_left_alone()
    {
        ChangePlan plan = Rigs.Even("8+").To(Rigs.Even("8+"));

        Assert.Empty(plan.Steps);
        Assert.Empty(plan.Unclear);
        Assert.Empty(plan.ReadAgain);
    }

    /// <remarks>0.6 off, known to 0.3 each: outside 0.5 with a probability of 0.59 alone, and 0.6 is less than 1.96 × 0.42.</remarks>
    [Fact]
    public void What_cannot_be_told_from_right_is_measured_again_and_not_changed()
    {
        ChangePlan plan = Rigs.Even("4-").With(RigItem.Spread, SeatTwo, 85.6, 0.3).To(Rigs.Even("4-", 0.3));

        Assert.Empty(plan.Steps);
        UnclearItem unclear = Assert.Single(plan.Unclear);
        Assert.Equal((RigItem.Spread, SeatTwo, UnclearWhy.CannotTell), (unclear.Aim.Item, unclear.Place, unclear.Why));
    }

    /// <remarks>
    /// √(0.375² + 0.375² − 2 · 0.2²) = 0.449, and 1 is more than 1.96 times that; of two gauges it would be 0.530, and is less. The two
    /// rigs side by side say that they differ: the plan may not say that nobody can tell.
    /// </remarks>
    [Fact]
    public void The_zero_of_the_gauge_that_read_both_rigs_drops_out()
    {
        (RigOfBoat now, RigOfBoat wanted) = (Read(4, "one"), Read(5, "one"));

        Assert.Contains(RigComparison.Of(now, wanted, isSameBoat: true).Items, i => i is { Item: RigItem.PitchAbeam, As: ComparedAs.Differs });
        Assert.Contains(now.To(wanted).Steps, s => s is { Item: RigItem.PitchAbeam, Place.Seat: 2 });
        Assert.DoesNotContain(now.To(Read(5, "another")).Steps, s => s.Item == RigItem.PitchAbeam);

        static RigOfBoat Read(double pitch, string gauge)
        {
            RigOfBoat rig = Rigs.Even("4-").With(RigItem.PitchAbeam, TwoPort, pitch, 0.375);
            return rig with { Values = [.. rig.Values.Select(v => v is { Item: RigItem.PitchAbeam, Place.Seat: 2 } ? v with { Gauge = gauge, ZeroU = 0.2 } : v)] };
        }
    }

    [Fact]
    public void What_nobody_measured_is_to_be_measured()
    {
        RigOfBoat rig = Rigs.Even("4-");
        rig = rig with { Values = [.. rig.Values.Where(v => v.Item != RigItem.Height)] };

        ChangePlan plan = rig.To(Rigs.Even("4-"));

        Assert.Empty(plan.Steps);
        Assert.Equal(4, plan.Unclear.Count(u => u is { Why: UnclearWhy.NotMeasured, Aim.Item: RigItem.Height }));
    }

    /// <remarks>Sweep overlap 115 − 85 + 2 = 32, then 31; outboard by spread (373 − 115)/85 = 3.0353, then 258/86 = 3.</remarks>
    [Fact]
    public void A_spread_of_one_more_takes_one_from_the_overlap_and_eases_the_gearing()
    {
        ChangeStep step = Assert.Single(Rigs.Even("4-").To(Rigs.Even("4-").With(RigItem.Spread, SeatTwo, 86)).Steps);

        Assert.Equal((ChangePhase.Width, 85.0, 86.0), (step.Phase, step.Before!.Value.Value, step.After!.Value.Value));
        Assert.Equal(
            [(EffectOf.Overlap, 32.0, 31.0), (EffectOf.Gearing, 3.0353, 3.0)],
            step.Effects.Select(e => (e.Of, Math.Round(e.Before, 4), Math.Round(e.After, 4))));
        Assert.Contains(RigItem.PitchCatch, step.ReadAgain);
        Assert.Contains(RigItem.Height, step.ReadAgain);
    }

    /// <remarks>Scull overlap 176 − 159 + 4 = 21; (200 + 200)/159 = 2.5157. Port set to 89: 22, and (200 + 199)/159 = 2.5094.</remarks>
    [Fact]
    public void Of_two_sculls_one_inboard_tells_by_half()
    {
        RigPlace port = new(1, Side.Port);
        ChangeStep step = Assert.Single(Rigs.Even("1x").To(Rigs.Even("1x").With(RigItem.Inboard, port, 89)).Steps);

        Assert.Equal(
            [(EffectOf.Overlap, 21.0, 22.0), (EffectOf.Gearing, 2.5157, 2.5094)],
            step.Effects.Select(e => (e.Of, Math.Round(e.Before, 4), Math.Round(e.After, 4))));
    }

    /// <summary>An oar made longer at its handle has more inboard by as much: a collar to be set is set after that.</summary>
    [Fact]
    public void A_longer_oar_has_more_inboard_too()
    {
        ChangePlan plan = Rigs.Even("4-").To(Rigs.Even("4-").With(RigItem.OarLength, TwoPort, 375));

        Assert.Equal(
            [(RigItem.OarLength, 373.0, 375.0), (RigItem.Inboard, 117.0, 115.0)],
            plan.Steps.Select(s => (s.Item!.Value, s.Before!.Value.Value, s.After!.Value.Value)));
        ChangePlan both = Rigs.Even("4-").To(
            Rigs.Even("4-").With(RigItem.OarLength, TwoPort, 375).With(RigItem.Inboard, TwoPort, 117));
        Assert.Equal(RigItem.OarLength, Assert.Single(both.Steps).Item);
    }

    [Fact]
    public void The_work_goes_in_the_order_in_which_nothing_spoils_what_was_set()
    {
        RigOfBoat wanted = Rigs.Even("4-").With(RigItem.Inboard, TwoPort, 117).With(RigItem.PitchAbeam, TwoPort, 6)
            .With(RigItem.LeanOut, TwoPort, 2).With(RigItem.Height, TwoPort, 19).With(RigItem.Spread, SeatTwo, 87)
            .With(RigItem.StretcherAngle, SeatTwo, 42);
        RigOfBoat now = Rigs.Even("4-").With(RigItem.StretcherAngle, SeatTwo, 38).Marked();
        wanted = wanted with { Riggers = [new(new(1, Side.Starboard), "3S"), new(new(3, Side.Starboard), "1S")] };
        now = now with { Riggers = [new(new(1, Side.Starboard), "1S"), new(new(3, Side.Starboard), "3S")] };

        // Of a four the starboard seats are 1 and 3; what is wanted at seat 2 is its port gate's.
        ChangePlan plan = now.To(wanted);

        Assert.Equal(
            [ChangePhase.Riggers, ChangePhase.Riggers, ChangePhase.Width, ChangePhase.Height, ChangePhase.Pin, ChangePhase.Insert, ChangePhase.Oars, ChangePhase.Stretcher],
            plan.Steps.Select(s => s.Phase));
        Assert.Equal(plan.Steps.Select(s => s.Phase).Order(), plan.Steps.Select(s => s.Phase));
    }

    /// <summary>A lean aft adds to the pitch abeam whole: set upright, 4° in the gate read 4 again, and no insert is needed.</summary>
    [Fact]
    public void A_pin_set_upright_gives_back_the_pitch_without_another_insert()
    {
        RigPlace place = new(2, Side.Port);
        RigOfBoat now = Rigs.Even("4-").With(RigItem.LeanAft, place, 2.9).With(RigItem.PitchAbeam, place, 6.9);

        ChangeStep step = Assert.Single(now.To(Rigs.Even("4-")).Steps);

        Assert.Equal(RigItem.LeanAft, step.Item);
        Work.Pack pack = Assert.IsType<Work.Pack>(step.Work);
        Assert.Equal(TiltWay.FootToBow, pack.Way);

        // 3 mm under the foot's 60: atan(3/60) = 2.862°.
        Assert.Equal([2.0, 1.0], pack.Sizes.ThicknessesMm);
        Assert.Equal(2.9 - 2.862, step.After!.Value.Value, 0.001);
        Assert.Contains(step.Effects, e => e.Of == EffectOf.PitchAbeam && Math.Abs(e.Before - 6.9) < 0.01 && Math.Abs(e.After - 4.04) < 0.01);
        Assert.Contains(Caution.BentPin, step.Cautions);
    }

    [Fact]
    public void Left_as_it_leans_an_insert_makes_up_for_it_where_that_is_wanted()
    {
        RigPlace place = new(2, Side.Port);
        RigOfBoat now = Rigs.Even("4-").With(RigItem.PitchAbeam, place, 6).With(RigItem.GatePitch, place, 6);

        ChangePlan plan = now.To(Rigs.Even("4-"));

        ChangeStep step = Assert.Single(plan.Steps);
        Assert.Equal(new Work.FitInsert(4, -2), step.Work);
        Assert.Equal([new PartCount(new(PartKind.Insert, 4), 1)], plan.Parts);
        Assert.Equal(4, step.After!.Value.Value, 1e-9);
    }

    [Fact]
    public void An_insert_that_comes_out_goes_into_another_gate()
    {
        (RigPlace one, RigPlace two) = (new(1, Side.Starboard), new(2, Side.Port));
        RigOfBoat now = Rigs.Even("4-").With(RigItem.PitchAbeam, one, 6).With(RigItem.GatePitch, one, 6) with
        {
            Inserts = new Dictionary<GatePlace, double> { [new(1, Side.Starboard)] = 6, [new(2, Side.Port)] = 4 },
        };
        RigOfBoat wanted = Rigs.Even("4-").With(RigItem.PitchAbeam, two, 6);

        ChangePlan plan = now.To(wanted, ChangeSettings.Default with { Stores = Stores.Of([new(new(PartKind.Insert, 4), 1)]) });

        Assert.Equal(2, plan.Steps.Count);
        Assert.Empty(plan.Missing);
        Assert.Equal([new(new(PartKind.Insert, 4), 1), new PartCount(new(PartKind.Insert, 6), 1)], plan.Freed);
    }

    [Fact]
    public void What_the_shelf_lacks_is_told()
    {
        RigPlace place = new(2, Side.Port);
        RigOfBoat now = Rigs.Even("4-").With(RigItem.PitchAbeam, place, 7).With(RigItem.GatePitch, place, 7);

        ChangePlan plan = now.To(Rigs.Even("4-"), ChangeSettings.Default with { Stores = Stores.Of([new(new(PartKind.Insert, 4), 0)]) });

        Assert.Equal([new PartCount(new(PartKind.Insert, 4), 1)], plan.Missing);
    }

    /// <summary>Three riggers that took each other's places are one ring and come off together.</summary>
    [Fact]
    public void Riggers_that_are_named_go_to_their_seats_ring_by_ring()
    {
        RigOfBoat wanted = Rigs.Even("8+").Marked();
        Dictionary<int, int> from = new() { [1] = 3, [3] = 5, [5] = 1, [2] = 8, [8] = 2 };
        RigOfBoat now = wanted with
        {
            Riggers = [.. wanted.Gates.Select(g => new RigMark(g, Rigs.Mark(g with { Seat = from.GetValueOrDefault(g.Seat, g.Seat) })))],
        };

        ChangePlan plan = now.To(wanted);

        Assert.Equal(5, plan.RiggersMoved);
        Assert.Equal([1, 5, 3, 2, 8], plan.Steps.Select(s => s.To!.Value.Seat));
        Assert.All(plan.Steps, s => Assert.Equal(Rigs.Mark(s.To!.Value), s.Mark));
        Assert.Equal(5, plan.ReadAgain.Count(r => r.Item == RigItem.PitchCatch));
        Assert.Equal(5, plan.ReadAgain.Count(r => r.Item == RigItem.Spread));
    }

    /// <summary>What goes with a rigger is found where it goes: the seat it leaves wants nothing set.</summary>
    [Fact]
    public void A_rigger_takes_its_height_along()
    {
        RigOfBoat wanted = Rigs.Even("8+").Marked().With(RigItem.Height, new(2, Side.Port), 19);
        RigOfBoat now = Rigs.Even("8+").With(RigItem.Height, new(4, Side.Port), 19) with
        {
            Riggers = [.. wanted.Gates.Select(g => new RigMark(g, Rigs.Mark(g with { Seat = g.Seat switch { 2 => 4, 4 => 2, int seat => seat } })))],
        };

        Assert.All(now.To(wanted).Steps, s => Assert.Equal(ChangePhase.Riggers, s.Phase));
    }

    [Fact]
    public void Riggers_stay_on_their_seats_unless_they_may_go()
    {
        RigOfBoat now = Rigs.Even("8+").With(RigItem.Height, new(2, Side.Port), 19).With(RigItem.Spread, SeatTwo, 87).With(RigItem.PitchAbeam, new(2, Side.Port), 6).With(RigItem.GatePitch, new(2, Side.Port), 6);
        RigOfBoat wanted = Rigs.Even("8+").With(RigItem.Height, new(4, Side.Port), 19).With(RigItem.Spread, new(4, null), 87).With(RigItem.PitchAbeam, new(4, Side.Port), 6);

        Assert.Equal((0, 6), (now.To(wanted).RiggersMoved, now.To(wanted).Steps.Count));
        ChangePlan free = now.To(wanted, ChangeSettings.Default with { MayExchangeRiggers = true });
        Assert.Equal((2, 2), (free.RiggersMoved, free.Steps.Count));
    }

    [Fact]
    public void Rigged_on_the_other_sides_a_pair_takes_its_riggers_along()
    {
        RigOfBoat now = Rigs.Even("2-").Marked();
        GatePlace[] other = [new(1, Side.Port), new(2, Side.Starboard)];

        ChangePlan plan = ChangePlan.Of(now, new("stroke on starboard", other, [], [], []), ChangeSettings.Default);

        Assert.Equal(
            [(2, 1, "2P"), (1, 2, "1S")],
            plan.Steps.Select(s => (s.From!.Value.Seat, s.To!.Value.Seat, s.Mark!)));
    }

    [Fact]
    public void A_rigger_that_is_not_on_the_boat_is_fetched_and_nothing_is_known_of_it()
    {
        RigOfBoat now = Rigs.Even("4-").Marked();
        TargetRig wanted = TargetRig.Like(now, isSameBoat: true) with
        {
            Riggers = [.. now.Riggers.Select(r => r.At.Seat == 2 ? r with { Mark = "spare" } : r)],
        };

        ChangePlan plan = ChangePlan.Of(now, wanted, ChangeSettings.Default);

        Assert.Equal([("spare", (GatePlace?)null), ("2P", new GatePlace(2, Side.Port))], plan.Steps.Select(s => (s.Mark ?? "?", s.From)));
        Assert.All(plan.Unclear, u => Assert.Equal((2, UnclearWhy.NotMeasured), (u.Place.Seat, u.Why)));
        Assert.NotEmpty(plan.Unclear);
    }

    [Property(MaxTest = 40)]
    public void Done_as_planned_nothing_is_left_to_do(int seed)
    {
        var random = new Random(seed);
        RigOfBoat now = Rigs.Even("4-");
        RigOfBoat wanted = Rigs.Even("4-");
        foreach (GatePlace gate in now.Gates)
        {
            var place = new RigPlace(gate.Seat, gate.Side);
            double pitch = random.Next(2, 8);
            now = now.With(RigItem.Spread, new(gate.Seat, null), 84 + random.Next(4)).With(RigItem.Height, place, 16 + random.Next(4))
                .With(RigItem.GatePitch, place, pitch).With(RigItem.PitchAbeam, place, pitch).With(RigItem.Inboard, place, 114 + random.Next(4));
        }

        ChangePlan plan = now.To(wanted);
        RigOfBoat after = now;
        foreach (ChangeStep step in plan.Steps)
        {
            after = after.With(step.Item!.Value, step.Place, step.After!.Value.Value);
            if (step.Work is Work.FitInsert insert)
            {
                after = after.With(RigItem.GatePitch, step.Place, insert.Degrees);
            }
        }

        Assert.Empty(after.To(wanted).Steps);
    }
}
