using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

public class GearingTests
{
    /// <summary>Half of the last figure printed.</summary>
    private const double Printed = 0.0005;

    /// <summary>
    /// Worked from the medians of the World Championships' rigging survey of 2017 by its definitions: width, inboard, length,
    /// then plain / with the gate of 4 cm / outboard to inboard / overlap.
    /// </summary>
    [Theory]
    [InlineData(Rowing.Scull, 160, 88.5, 288.5, 2.500, 2.564, 2.260, 21.0)]
    [InlineData(Rowing.Sweep, 86, 116, 375.5, 3.017, 3.089, 2.237, 32.0)]
    [InlineData(Rowing.Sweep, 83.5, 113.75, 377, 3.153, 3.230, 2.314, 32.25)]
    public void Medians_of_the_survey_have_the_gearing_worked_from_them(
        Rowing rowing, double width, double inboard, double length, double plain, double withGate, double lever, double overlap)
    {
        SeatRig rig = SeatRig.FromCentimetres(rowing, width, inboard, length, 15);

        Assert.Equal(plain, Gearing.Plain(rig), Printed);
        Assert.Equal(withGate, Gearing.WithGate(rig, Length.FromCentimetres(4)), Printed);
        Assert.Equal(lever, Gearing.Lever(rig), Printed);
        Assert.Equal(overlap, Gearing.OverlapOf(rig).Centimetres, 1e-9);
    }

    /// <summary>Kleshnev 2007, in summary: the lever does not depend on the spread, whatever gearing says.</summary>
    [Fact]
    public void The_lever_knows_nothing_of_the_spread()
    {
        SeatRig wide = SeatRig.FromCentimetres(Rowing.Sweep, 86, 116, 375.5, 15);
        SeatRig narrow = wide.With(RigMeasure.Spread, Length.FromCentimetres(84));

        Assert.Equal(Gearing.Lever(wide), Gearing.Lever(narrow));
        Assert.True(Gearing.Plain(narrow) > 1.02 * Gearing.Plain(wide));
    }

    [Theory]
    [InlineData(0, 116, 375)]
    [InlineData(86, 0, 375)]
    [InlineData(86, 116, 116)]
    public void A_rig_that_does_not_hold_together_is_none(double width, double inboard, double length) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SeatRig.FromCentimetres(Rowing.Sweep, width, inboard, length, 15));

    /// <summary>By hand: outboard 261 by a spread of 87 is 3; 200 by half a span of 160 is 2.5.</summary>
    [Fact]
    public void Gearing_divides_by_the_way_from_the_keel_line_to_the_pin()
    {
        Assert.Equal(3, Gearing.Of(Rowing.Sweep, Length.FromCentimetres(261), Length.FromCentimetres(87)), 1e-12);
        Assert.Equal(2.5, Gearing.Of(Rowing.Scull, Length.FromCentimetres(200), Length.FromCentimetres(160)), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.Of(Rowing.Sweep, Length.FromCentimetres(261), Length.Zero));
    }

    [Fact]
    public void A_rig_after_steps_has_them_all_or_is_none()
    {
        var rig = SeatRig.FromCentimetres(Rowing.Sweep, 85, 115, 375, 15);

        Assert.Equal(
            SeatRig.FromCentimetres(Rowing.Sweep, 84, 116, 377, 12),
            rig.After([Step(RigMeasure.Spread, -1), Step(RigMeasure.Inboard, 1), Step(RigMeasure.OarLength, 2), Step(RigMeasure.WorkThrough, -3)]));
        Assert.Null(rig.After([Step(RigMeasure.Spread, -85)]));
        Assert.Null(rig.After([Step(RigMeasure.Inboard, 260)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => rig.After([Step(RigMeasure.Height, 1)]));

        static RigStep Step(RigMeasure measure, double by) => new(measure, Length.FromCentimetres(by));
    }
}
