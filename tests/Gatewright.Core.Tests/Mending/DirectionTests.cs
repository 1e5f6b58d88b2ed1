using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Mending;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Mending;

/// <summary>Which way a remedy sends the person: literal words for each sign of each lean, the same wherever and however the boat lies.</summary>
public class DirectionTests
{
    public static TheoryData<Side, Lie> Everywhere => new()
    {
        { Side.Port, Lie.Upright },
        { Side.Port, Lie.Inverted },
        { Side.Starboard, Lie.Upright },
        { Side.Starboard, Lie.Inverted },
    };

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void A_pin_that_leans_aft_is_shimmed_at_the_stern_edge_and_its_top_comes_to_the_bow(Side side, Lie lie)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, 3, 0), side, lie);

        Assert.Contains(
            "under the stern edge of the pin's foot, between it and the rigger: the top of the pin goes 2.9° towards the bow",
            Faulty.Remedy(check, Cause.PinAft, RemedyKind.PinFootShim, side).Instruction,
            StringComparison.Ordinal);
        string stay = Faulty.Remedy(check, Cause.PinAft, RemedyKind.Backstay, side).Instruction;
        Assert.Contains("mm towards the bow: ", stay, StringComparison.Ordinal);
        Assert.Contains("runs to the bow is made shorter for that, one that runs to the stern longer", stay, StringComparison.Ordinal);

        // 160 mm × tan 3° is 8.4 mm; what the prior takes off is less than 0.2.
        Assert.Matches(
            @"bring its tip back by 8\.[234] mm towards the bow\.$",
            Faulty.Remedy(check, Cause.PinAft, RemedyKind.StraightenPin, side).Instruction);
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void A_pin_that_leans_forward_is_shimmed_at_the_bow_edge_and_its_top_comes_to_the_stern(Side side, Lie lie)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, -3, 0), side, lie);

        Assert.Contains(
            "under the bow edge of the pin's foot, between it and the rigger: the top of the pin goes 2.9° towards the stern",
            Faulty.Remedy(check, Cause.PinAft, RemedyKind.PinFootShim, side).Instruction,
            StringComparison.Ordinal);
        string stay = Faulty.Remedy(check, Cause.PinAft, RemedyKind.Backstay, side).Instruction;
        Assert.Contains("mm towards the stern: ", stay, StringComparison.Ordinal);
        Assert.Contains("runs to the bow is made longer for that, one that runs to the stern shorter", stay, StringComparison.Ordinal);
    }

    /// <remarks>
    /// A washer behind the lower bolt of a rigger leans its pin inward: question-and-answer archive, 2002, low authority,
    /// as a check of the sign.
    /// </remarks>
    [Theory]
    [MemberData(nameof(Everywhere))]
    public void A_pin_that_leans_out_gets_washers_behind_the_lower_bolt_and_its_top_comes_to_the_hull(Side side, Lie lie)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, 0, 3), side, lie);

        Assert.Contains(
            "behind the lower bolt of the rigger's plate, the one nearer the keel: the top of the pin goes 2.9° towards the hull",
            Faulty.Remedy(check, Cause.PinOut, RemedyKind.PlateWasher, side).Instruction,
            StringComparison.Ordinal);
        Assert.Contains(
            "under the outer edge of the pin's foot, the one away from the hull, between it and the rigger: the top of the pin goes 2.9° towards the hull",
            Faulty.Remedy(check, Cause.PinOut, RemedyKind.PinFootShim, side).Instruction,
            StringComparison.Ordinal);
        Assert.Matches(
            @"bring its tip back by 8\.[234] mm towards the hull\.$",
            Faulty.Remedy(check, Cause.PinOut, RemedyKind.StraightenPin, side).Instruction);
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void A_pin_that_leans_in_gets_washers_behind_the_upper_bolt_and_its_top_goes_from_the_hull(Side side, Lie lie)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, 0, -3), side, lie);

        Assert.Contains(
            "behind the upper bolt of the rigger's plate, the one nearer the gunwale: the top of the pin goes 2.9° away from the hull",
            Faulty.Remedy(check, Cause.PinOut, RemedyKind.PlateWasher, side).Instruction,
            StringComparison.Ordinal);
        Assert.Contains(
            "under the inner edge of the pin's foot, the one towards the hull, between it and the rigger: the top of the pin goes 2.9° away from the hull",
            Faulty.Remedy(check, Cause.PinOut, RemedyKind.PinFootShim, side).Instruction,
            StringComparison.Ordinal);
    }

    /// <remarks>160 mm × tan 2° is 5.6 mm.</remarks>
    [Theory]
    [InlineData(2, 2, @"the top of the pin has to come back by 5\.[456] mm towards the bow and 5\.[456] mm towards the hull\.$")]
    [InlineData(-2, 2, @"the top of the pin has to come back by 5\.[456] mm towards the stern and 5\.[456] mm towards the hull\.$")]
    [InlineData(2, -2, @"the top of the pin has to come back by 5\.[456] mm towards the bow and 5\.[456] mm away from the hull\.$")]
    [InlineData(-2, -2, @"the top of the pin has to come back by 5\.[456] mm towards the stern and 5\.[456] mm away from the hull\.$")]
    public void A_rigger_knocked_both_ways_is_sent_back_both_ways(double aft, double @out, string words)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, aft, @out));

        Assert.Matches(words, Faulty.Remedy(check, Cause.Rigger, RemedyKind.RefitRigger).Instruction);
        string set = Faulty.Remedy(check, Cause.Rigger, RemedyKind.SetRigger).Instruction;
        Assert.Contains(@out > 0 ? "lower bolt" : "upper bolt", set, StringComparison.Ordinal);
        Assert.Contains(aft > 0 ? "mm towards the bow" : "mm towards the stern", set, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(6, "Fit an insert that gives 4°, about 2.0° less than what is in the gate now.")]
    [InlineData(1.5, "Fit an insert that gives 4°, about 2.5° more than what is in the gate now.")]
    public void A_wrong_insert_is_replaced_by_one_of_more_or_less(double gatePitch, string words)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(gatePitch, 0, 0));

        Assert.StartsWith(words, Faulty.Remedy(check, Cause.GatePitch, RemedyKind.InsertSwap).Instruction, StringComparison.Ordinal);
    }

    /// <summary>The geometry's own word on it: sent towards the bow, a pin that leaned aft gives less pitch abeam.</summary>
    [Theory]
    [InlineData(3, 0, Cause.PinAft, RemedyKind.Backstay, Station.Abeam)]
    [InlineData(0, 3, Cause.PinOut, RemedyKind.PlateWasher, Station.Catch)]
    public void Sent_the_way_it_is_told_the_gate_loses_the_pitch_it_had_too_much(
        double aft, double @out, Cause cause, RemedyKind kind, Station station)
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, aft, @out));
        Remedy remedy = Faulty.Remedy(check, cause, kind);
        OarAngle at = check.Settings.Diagnosing.Measuring.Scull.At(station);

        Assert.True(remedy.After!.PitchAt(at).Degrees < remedy.Before!.PitchAt(at).Degrees - 2);
    }
}
