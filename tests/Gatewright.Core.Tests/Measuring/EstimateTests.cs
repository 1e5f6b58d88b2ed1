using System.Globalization;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Measuring;

public class EstimateTests
{
    [Fact]
    public void An_uncertainty_below_0_is_refused()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Estimate.FromDegrees(3, -0.1));

        Assert.StartsWith("A standard uncertainty must be 0 or more.", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Estimate.FromDegrees(3, 0) with { U = Angle.FromDegrees(-1) });
        Assert.Throws<ArgumentOutOfRangeException>(() => Estimate.FromDegrees(3, double.NaN));
    }

    [Theory]
    [InlineData(3, 0.34, "3.0° ± 0.34")]
    [InlineData(-1.25, 0.3, "-1.25° ± 0.3")]
    public void It_is_written_with_a_point_in_every_culture(double value, double u, string written)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(written, Estimate.FromDegrees(value, u).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
