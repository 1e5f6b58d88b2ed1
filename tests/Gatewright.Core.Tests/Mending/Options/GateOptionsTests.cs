using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;
using FsCheck.Xunit;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Mending.Options;

public class GateOptionsTests
{
    [Property(MaxTest = 40)]
    public void A_gate_that_is_left_is_judged_as_it_was_read(int seed)
    {
        (BoatCheck check, _) = Sheds.Drawn(seed);

        foreach (GateVerdict gate in check.Verdict.Gates)
        {
            OptionVerdict left = GateOptions.Left(check, gate.Gate).Verdict;
            Assert.Equal(!gate.StaysAshore, left.IsAboveFloors);
            Assert.Equal(gate.Reasons.All(r => r.Kind == ReasonKind.Range), left.IsInside);
        }
    }

    [Fact]
    public void The_pitches_of_a_gate_that_is_left_are_those_of_its_verdict()
    {
        BoatCheck check = Sheds.Check(null, Read(Port(2), Station.Catch, 6.5), Read(Port(2), Station.Finish, 5));

        GateOption left = GateOptions.Left(check, Port(2));

        Assert.Equal(check.Verdict.Gates[0].Pitches.Select(p => p.Pitch), left.Pitches.Select(p => p.Pitch));
        Assert.Equal([true, false, true], left.Pitches.Select(p => p.IsJudged));
        Assert.Equal(6500, left.Thousandths(Station.Catch));
        Assert.Null(left.Thousandths(Station.Abeam));
    }

    [Fact]
    public void An_insert_makes_the_gate_s_pitch_what_it_is_stamped_and_leaves_the_pin_as_it_is()
    {
        BoatCheck check = KnownGate(2, 0.5, 1);
        GateBelief before = Belief(check);

        GateOption option = All(check).With(RemedyKind.InsertSwap, "4°", new Part(PartKind.Insert, 4));

        GateState after = option.After!.Mean;
        Assert.Equal(4, after.GatePitch.Degrees);
        // Accounts of the gate less likely than 0.0001 are left out of an option.
        Close.To(before.Mean.Pin.Aft.Degrees, after.Pin.Aft.Degrees, 1e-3);
        Close.To(before.Mean.Pin.Out.Degrees, after.Pin.Out.Degrees, 1e-3);
        foreach (Station station in Stations.All)
        {
            Close.To(
                PitchGeometry.At(Usual.Sweep.At(station), after, Side.Port).Degrees,
                option.Pitches[(int)station].Pitch.Value.Degrees,
                1e-12,
                station.Word());
        }
    }

    // atan(1/60) = 0.954841°: the sine bar's relation, base for hypotenuse (Machinery's Handbook, 31st ed., p. 695).
    // Over the 70 mm between the plate's bolts atan(1/70) = 0.818455°.
    [Theory]
    [InlineData("under the bow edge", PartKind.Shim, RemedyKind.PinFootShim, 0.954841, 0, 1, 1)]
    [InlineData("under the stern edge", PartKind.Shim, RemedyKind.PinFootShim, -0.954841, 0, -1, -1)]
    [InlineData("under the inner edge", PartKind.Shim, RemedyKind.PinFootShim, 0, 0.954841, 1, -1)]
    [InlineData("under the outer edge", PartKind.Shim, RemedyKind.PinFootShim, 0, -0.954841, -1, 1)]
    [InlineData("behind the upper bolt", PartKind.Washer, RemedyKind.PlateWasher, 0, 0.818455, 1, -1)]
    [InlineData("behind the lower bolt", PartKind.Washer, RemedyKind.PlateWasher, 0, -0.818455, -1, 1)]
    public void A_millimetre_tilts_the_pin_by_its_sine_bar_the_way_the_words_say(
        string words, PartKind kind, RemedyKind remedy, double aft, double @out, int atCatch, int atFinish)
    {
        BoatCheck check = KnownGate(4, 0, 0);
        GateState before = Belief(check).Mean;

        GateOption option = All(check).With(remedy, words, new Part(kind, 1));

        // Accounts of the gate less likely than 0.0001 are left out of an option; six digits are written above.
        Close.To(aft, option.After!.Mean.Pin.Aft.Degrees - before.Pin.Aft.Degrees, 1e-4);
        Close.To(@out, option.After!.Mean.Pin.Out.Degrees - before.Pin.Out.Degrees, 1e-4);
        Assert.Equal(atCatch, Sign(option, before, Station.Catch));
        Assert.Equal(atFinish, Sign(option, before, Station.Finish));
    }

    [Fact]
    public void What_is_believed_of_a_mended_gate_is_what_all_stories_together_say()
    {
        // A shim across the boat leaves the pitch abeam as it was, but for its own uncertainty, which is set to nothing.
        var sure = new OptionSettings(MendingSettings.Default with { TiltU = Angle.Zero }, Sheds.Usual.Sizes);
        foreach (int seed in Enumerable.Range(1, 20))
        {
            (BoatCheck check, GatePlace gate) = Sheds.Drawn(seed);
            GaussianMixture before = check.Diagnosis.At(gate, OarAngle.FromDegrees(0));

            GateOption option = GateOptions.All(check, gate, sure)
                .With(RemedyKind.PinFootShim, "under the inner edge", new Part(PartKind.Shim, 0.5));

            // The diagnosis is of first order and the option exact: 0.04° within leans of 3°, as PitchSlopes states, and
            // faults drawn here go to twice that. What that moves a probability is its density times as much.
            PredictedPitch abeam = option.Pitches[(int)Station.Abeam];
            Close.To(before.Mean, abeam.Pitch.Value.Degrees, 0.1, "mean");
            Close.To(before.Sd, abeam.Pitch.U.Degrees, 0.01, "u");
            Close.To(1 - before.Above(2), abeam.Below, 0.1, "below");
        }
    }

    [Fact]
    public void A_floor_is_judged_by_the_stories_side_by_side_and_not_by_their_average()
    {
        // Nobody can tell a wrong insert from a pin that leans forward, so a new insert cures the gate or does nothing
        // much: an average with one width would call 2° far below, and the truth is one story in a few.
        BoatCheck check = Sheds.Check(null, Read(Starboard(1), Station.Abeam, 4), Read(Port(2), Station.Abeam, 0.5));
        GateOption option = All(check).With(RemedyKind.InsertSwap, "5°", new Part(PartKind.Insert, 5));
        PredictedPitch abeam = option.Pitches[(int)Station.Abeam];

        double forward = Probability(check, Cause.PinAft) + Probability(check, Cause.Rigger);
        Assert.InRange(forward, 0.1, 0.9);
        // After the insert a pin that is still 3.3° forward leaves 1.7° ± 0.4: under 2° in four cases of five. A healthy
        // one leaves 5°, which is above it for certain.
        Close.To(0.8 * forward, abeam.Below, 0.1);
        Assert.False(option.Verdict.IsAboveFloors);
        double averaged = Normal.Cdf((2 - abeam.Pitch.Value.Degrees) / abeam.Pitch.U.Degrees);
        Assert.True(abeam.Below > averaged + 0.1, $"{abeam.Below} is not far above {averaged}");
    }

    [Fact]
    public void A_new_pin_cures_a_bent_one_and_not_a_rigger_knocked()
    {
        BoatCheck check = Sheds.Pair(6.5, 4, 2);
        double rigger = Probability(check, Cause.Rigger);
        Assert.InRange(rigger, 0.05, 0.5);

        GateOption option = All(check).With(RemedyKind.ReplacePin, "new pin", new Part(PartKind.Pin, 0));

        // The pin's lean is gone in every story but the rigger's, where it stays: about 3°.
        Close.To(3 * rigger, option.After!.Mean.Pin.Out.Degrees, 0.3);
    }

    [Fact]
    public void A_new_pin_is_not_offered_where_none_is_likely_to_be_bent() =>
        Assert.DoesNotContain(
            GateOptions.All(Sheds.Pair(4, 4, 4), Port(2), Sheds.Usual), o => o.Kinds.Contains(RemedyKind.ReplacePin));

    [Fact]
    public void A_backstay_is_offered_only_where_there_is_one_and_brings_the_pitch_to_its_aim_without_a_part()
    {
        BoatCheck check = Sheds.Pair(5.5, 6.5, 6);
        Assert.DoesNotContain(All(check), o => o.Kinds.Contains(RemedyKind.Backstay));

        GateOption stay = GateOptions.All(check, Port(2), Sheds.Usual with { HasBackstays = true })
            .Single(o => o.Kinds.SequenceEqual([RemedyKind.Backstay]));

        Assert.Empty(stay.Parts);
        Assert.Contains("longer", stay.Instruction, StringComparison.Ordinal);
        Assert.Equal(0, stay.Verdict.Deviation);
    }

    // In steps of the gauge, 0.5°: under a step is none, then the square of whole steps, summed over the stations.
    [Theory]
    [InlineData(4, 4, 4, 0)]
    [InlineData(4.4, 3.6, 4.4, 0)]
    [InlineData(4.5, 4, 4, 1)]
    [InlineData(5, 4, 4, 4)]
    [InlineData(3.5, 3.5, 2, 18)]
    [InlineData(1, 1, 1, 108)]
    public void Deviation_is_counted_in_steps_of_the_gauge(double atCatch, double abeam, double atFinish, int expected) =>
        Assert.Equal(expected, GateOptions.Left(Sheds.Pair(atCatch, abeam, atFinish), Port(2)).Verdict.Deviation);

    [Fact]
    public void Where_the_standard_does_not_allow_what_gates_are_meant_to_be_the_middle_of_its_limits_is_the_aim()
    {
        var steep = new Standard(
            "steep", StationLimits.FromDegrees(5, 7, 2), StationLimits.FromDegrees(5, 7, 2), StationLimits.FromDegrees(3, 7, 0), Angle.FromDegrees(2), Angle.FromDegrees(2));

        Assert.Equal(0, GateOptions.Left(Sheds.Pair(6, 6, 4, steep), Port(2)).Verdict.Deviation);
    }

    [Fact]
    public void A_stamp_on_the_insert_is_the_aim()
    {
        var context = new BoatContext { Targets = new Dictionary<GatePlace, GateState> { [Port(2)] = GateState.FromDegrees(5, 0, 0) } };
        BoatCheck check = BoatCheck.Of(
            Boat("2-", [.. Stations.All.Select(s => Read(Port(2), s, 5))]), context, CheckSettings.Default);

        Assert.Equal(0, GateOptions.Left(check, Port(2)).Verdict.Deviation);
    }

    [Fact]
    public void A_gate_that_is_inside_gains_nothing_by_coming_nearer()
    {
        IReadOnlyList<GateOption> options = GateOptions.All(Sheds.Pair(4.5, 5, 4.5), Port(2), Sheds.Usual);

        Assert.Equal(6, options[0].Verdict.Deviation);
        Assert.All(options, o => Assert.True(o.Verdict.Deviation >= 6));
    }

    [Fact]
    public void What_mends_the_likely_cause_and_what_makes_up_for_it_are_told_apart()
    {
        BoatCheck check = KnownGate(4, 3, 0);

        Assert.Null(All(check).With(RemedyKind.PinFootShim, "stern edge", new Part(PartKind.Shim, 2)).MakesUpFor);
        Assert.Equal(Cause.PinAft, All(check).With(RemedyKind.InsertSwap, "1°", new Part(PartKind.Insert, 1)).MakesUpFor);
        Assert.Null(GateOptions.Left(check, Port(2)).MakesUpFor);
    }

    [Property(MaxTest = 40)]
    public void What_is_worth_doing_brings_a_gate_inside_or_clear_of_a_floor(int seed)
    {
        (BoatCheck check, GatePlace gate) = Sheds.Drawn(seed);

        IReadOnlyList<GateOption> options = GateOptions.Worthwhile(check, gate, Sheds.Usual);

        Assert.True(options[0].IsLeft);
        Assert.All(options.Skip(1), o => Assert.True(
            o.Verdict.IsInside || (o.Verdict.IsAboveFloors && !options[0].Verdict.IsAboveFloors)));
    }

    [Fact]
    public void A_gate_of_which_nothing_was_read_has_no_options()
    {
        Assert.Throws<ArgumentException>(() => GateOptions.For(Sheds.Pair(4, 4, 4), Starboard(2), Sheds.Usual));
        Assert.Throws<ArgumentException>(() => GateOptions.Left(Sheds.Pair(4, 4, 4), Starboard(2)));
    }

    [Fact]
    public void Two_things_done_at_once_take_the_parts_and_the_time_of_both()
    {
        GateOption both = All(Sheds.Pair(7, 6.5, 4)).First(o => o.Kinds.SequenceEqual([RemedyKind.PlateWasher, RemedyKind.InsertSwap]));

        Assert.Equal(15 + 10, both.Minutes);
        Assert.Contains(both.Parts, p => p.Kind == PartKind.Insert);
        Assert.Contains(both.Parts, p => p.Kind == PartKind.Washer);
        Assert.Contains(" Then: Fit an insert", both.Instruction, StringComparison.Ordinal);
    }

    private static IReadOnlyList<GateOption> All(BoatCheck check) => GateOptions.All(check, Port(2), Sheds.Usual);

    /// <summary>A gate whose every unknown was read by itself, so that little is left to believe.</summary>
    private static BoatCheck KnownGate(double gatePitch, double aft, double @out)
    {
        GateState state = GateState.FromDegrees(gatePitch, aft, @out);
        return Sheds.Check(
            null,
            [.. Stations.All.Select(s => Read(Port(2), s, PitchGeometry.At(Usual.Sweep.At(s), state, Side.Port).Degrees)),
                Read(ReadItem.PinAft, Port(2), aft), Read(ReadItem.PinOut, Port(2), @out), Read(ReadItem.GatePitch, Port(2), gatePitch)]);
    }

    /// <summary>What is believed of stroke's gate, from the diagnosis.</summary>
    private static GateBelief Belief(BoatCheck check)
    {
        GateDiagnosis gate = check.Diagnosis.Gates.Single(g => g.Gate == Port(2));
        return new(
            gate.Gate,
            new(new(gate.GatePitch.Value), new(new(gate.LeanAft.Value), new(gate.LeanOut.Value))),
            new(3, new double[9]));
    }

    private static double Probability(BoatCheck check, Cause cause) =>
        check.Diagnosis.Probability(p => p.Cause == cause && p.Touches(Port(2)));

    private static int Sign(GateOption option, GateState before, Station station) => Math.Sign(
        option.Pitches[(int)station].Pitch.Value.Degrees - PitchGeometry.At(Usual.Sweep.At(station), before, Side.Port).Degrees);
}
