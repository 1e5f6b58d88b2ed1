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
}
