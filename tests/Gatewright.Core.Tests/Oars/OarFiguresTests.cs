using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Oars;

public class OarFiguresTests
{
    private static readonly Gauge s_gauge = MeasuringSettings.Default.GaugeNamed("club gauge");

    /// <summary>By hand: 0.3² placing, 0.2² repeatability, 0.5²/12 step; 0.1² level, 0.2² zero, 0.5² shape.</summary>
    [Fact]
    public void A_sleeve_read_once_is_as_uncertain_as_its_parts()
    {
        OarFigure figure = OarFigures.Default.Sleeve([Read(1.3, 0.3)], "cleaver");

        Close.To(1.0, figure.Value, 1e-12);
        Close.To(Math.Sqrt(0.09 + 0.04 + (0.25 / 12)), figure.OwnU, 1e-12);
        Close.To(Math.Sqrt(0.09 + 0.04 + (0.25 / 12) + 0.01 + 0.04 + 0.25), figure.U, 1e-12);
    }

    [Fact]
    public void Read_twice_only_what_is_its_own_shrinks()
    {
        OarFigure once = OarFigures.Default.Sleeve([Read(1, 0)], "cleaver");
        OarFigure twice = OarFigures.Default.Sleeve([Read(1, 0), Read(2, 0)], "cleaver");

        Close.To(1.5, twice.Value, 1e-12);
        Close.To(once.OwnU / Math.Sqrt(2), twice.OwnU, 1e-12);
        Assert.Equal(once.Shared, twice.Shared);
    }

    [Fact]
    public void The_gauges_zero_is_taken_out()
    {
        Gauge high = s_gauge with { Zero = new(Estimate.FromDegrees(0.4, 0.05), true) };
        var read = new SleeveReading(Angle.FromDegrees(1), new("s", new(Lie.Upright, new HullLevel.BubbleCentred())), high);

        Close.To(0.6, OarFigures.Default.Sleeve([read], null).Value, 1e-12);
    }

    /// <summary>A day's lengths share the tape: 0.05 cm drops out of their difference, which leaves √2 · 0.2.</summary>
    [Fact]
    public void Lengths_of_a_day_share_the_tape()
    {
        var day = new DateOnly(2026, 10, 10);
        OarFigure one = OarFigures.Length(OarItem.Length, [376], day);
        OarFigure other = OarFigures.Length(OarItem.Length, [375], day);

        (double apart, double u) = OarFigure.Combined([one, other], [1, -1]);

        Close.To(1, apart, 1e-12);
        Close.To(Math.Sqrt(2) * 0.2, u, 1e-12);
        Close.To(Math.Sqrt(0.04 + 0.0025), one.U, 1e-12);
    }

    /// <summary>On an upright pin the sleeve adds whole, everywhere: γ and ε turn about one axis.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(55)]
    [InlineData(-35)]
    public void On_an_upright_pin_the_sleeve_adds_whole(double at) => Close.To(
        4.5,
        BladePitch.Of(Estimate.FromDegrees(4, 0.3), OarAngle.FromDegrees(at), GateState.FromDegrees(4, 0, 0), Side.Port, SleeveError.FromDegrees(0.5), 0.4).Value.Degrees,
        1e-9);

    [Fact]
    public void What_one_gauge_read_twice_counts_twice_over()
    {
        Estimate two = BladePitch.Of(Estimate.FromDegrees(4, 0.3), default, default, Side.Port, SleeveError.FromDegrees(1), 0.4);
        Estimate one = BladePitch.Of(Estimate.FromDegrees(4, 0.3), default, default, Side.Port, SleeveError.FromDegrees(1), 0.4, gaugeU: 0.2);

        Close.To(0.5, two.U.Degrees, 1e-12);
        Close.To(Math.Sqrt(0.25 + (2 * 0.04)), one.U.Degrees, 1e-12);
    }

    private static SleeveReading Read(double shown, double bowHigh) =>
        new(Angle.FromDegrees(shown), new("s", new(Lie.Upright, new HullLevel.Read(HullAttitude.FromDegrees(bowHigh, 0)))), s_gauge);
}
