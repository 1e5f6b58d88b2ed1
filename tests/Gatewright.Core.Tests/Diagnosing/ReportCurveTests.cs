using FsCheck.Xunit;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>The chance of a report, averaged over a quantity that is known to be normal.</summary>
public sealed class ReportCurveTests
{
    private static readonly ReportCurve Curve = new(2, 1, 0.03, 0.5);

    [Theory]
    [InlineData(2.0, 0.25)]
    [InlineData(0.5, 1.0)]
    [InlineData(5.0, 4.0)]
    [InlineData(-1.0, 0.0001)]
    public void The_closed_form_is_the_average_of_the_curve(double mean, double variance)
    {
        // The trapezium rule over ±9 standard deviations, against a normal weight: exact to rounding.
        const int Steps = 2000;
        double deviation = Math.Sqrt(variance);
        double step = 18 * deviation / Steps;
        double sum = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double x = mean + (i * step) - (9 * deviation);
            double chance = 0.03 + (0.47 * Normal.Cdf((x - 2) / 1));
            sum += chance * Normal.Density((x - mean) / deviation) / deviation * step;
        }

        Assert.Equal(sum, Curve.Above(mean, variance), 1e-9);
    }

    [Fact]
    public void At_the_threshold_the_chance_is_half_way()
    {
        Assert.Equal(0.265, Curve.Above(2, 0.5), 1e-12);
        Assert.Equal(0.265, Curve.Below(2, 0.5), 1e-12);
    }

    [Fact]
    public void Far_from_trouble_it_is_the_base_and_deep_in_it_the_peak()
    {
        Assert.Equal(0.03, Curve.Below(20, 1), 1e-12);
        Assert.Equal(0.5, Curve.Below(-20, 1), 1e-12);
        Assert.Equal(0.5, Curve.Above(20, 1), 1e-12);
    }

    [Property]
    public void Falling_and_rising_are_mirror_images(int tenths, byte hundredths)
    {
        double mean = tenths % 200 / 10.0;
        double variance = hundredths / 100.0;
        Assert.Equal(Curve.Above(mean, variance), Curve.Below(4 - mean, variance), 1e-12);
    }
}
