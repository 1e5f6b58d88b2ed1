using Gatewright.Core.Changing;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

/// <summary>One seat set to figures that were chosen, the rest of the boat as it is.</summary>
public class SeatSetTests
{
    [Fact]
    public void Only_that_seat_is_set_and_only_what_was_chosen()
    {
        ChangePlan plan = Plan(Rigs.Even("4-"), 3, (RigMeasure.Spread, 86), (RigMeasure.Inboard, 116.5));

        Assert.Equal(
            [(RigItem.Spread, 3, 85, 86), (RigItem.Inboard, 3, 115, 116.5)],
            plan.Steps.Select(s => (s.Item!.Value, s.Place.Seat, s.Before!.Value.Value, s.After!.Value.Value)));
        Assert.Empty(plan.Unclear);
    }

    [Fact]
    public void Of_a_sculling_seat_both_oars_are_set() => Assert.Equal(
        [Side.Port, Side.Starboard],
        Plan(Rigs.Even("2x"), 2, (RigMeasure.Inboard, 89)).Steps.Select(s => s.Place.Side!.Value).Order());

    /// <remarks>u is √2 · 0.1 at most: 0.4 cm is more than 1.96 times that, though nearer than another rig has to lie, and 0.1 cm is less.</remarks>
    [Theory]
    [InlineData(115.4, 1, 0)]
    [InlineData(115.1, 0, 1)]
    [InlineData(115, 0, 0)]
    public void What_was_chosen_has_no_tolerance_but_what_can_be_told(double inboard, int steps, int unclear)
    {
        ChangePlan plan = Plan(Rigs.Even("4-"), 1, (RigMeasure.Inboard, inboard));

        Assert.Equal((steps, unclear), (plan.Steps.Count, plan.Unclear.Count));
    }

    private static ChangePlan Plan(RigOfBoat rig, int seat, params (RigMeasure Measure, double Value)[] figures) =>
        ChangePlan.Of(rig, TargetRig.OfSeat("as chosen", rig, seat, figures), Rigs.Exact);
}
