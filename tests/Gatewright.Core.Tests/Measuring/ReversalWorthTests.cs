using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Measuring;

public class ReversalWorthTests
{
    // By hand: √(0.25/12 + 0.04 + (0.5 · π/180)² + 0.2²) and the same with 0.05².
    [Fact]
    public void A_usual_gauge_gains_what_its_zero_cost()
    {
        var worth = ReversalWorth.Of(MeasuringSettings.Default.GaugeNamed("dial"), MeasuringSettings.Default);

        Close.To(0.31766254, worth.Unchecked.CombinedDegrees, 5e-9);
        Close.To(0.25181241, worth.Checked.CombinedDegrees, 5e-9);
    }

    [Fact]
    public void The_finer_the_gauge_the_more_a_check_is_worth()
    {
        Gauge fine = MeasuringSettings.Default.GaugeNamed("dial") with { Resolution = Angle.FromDegrees(0.1), Repeatability = Angle.FromDegrees(0.05) };
        var worth = ReversalWorth.Of(fine, MeasuringSettings.Default);
        var usual = ReversalWorth.Of(MeasuringSettings.Default.GaugeNamed("dial"), MeasuringSettings.Default);

        Assert.True(
            worth.Checked.CombinedDegrees / worth.Unchecked.CombinedDegrees < usual.Checked.CombinedDegrees / usual.Unchecked.CombinedDegrees);
    }

    [Fact]
    public void Only_the_zero_differs()
    {
        var worth = ReversalWorth.Of(MeasuringSettings.Default.GaugeNamed("dial"), MeasuringSettings.Default);
        Assert.Equal(worth.Unchecked with { GaugeZero = 0.05 }, worth.Checked);
    }
}
