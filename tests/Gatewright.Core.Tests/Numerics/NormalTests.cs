using FsCheck.Xunit;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;
using MathNet.Numerics;

namespace Gatewright.Core.Tests.Numerics;

public class NormalTests
{
    /// <summary>
    /// JCGM 106:2012 and the tables of every statistics text: 0.95 at 1.644854, 0.975 at 1.959964, 0.8 at 0.841621.
    /// </summary>
    [Theory]
    [InlineData(1.644854, 0.95)]
    [InlineData(1.959964, 0.975)]
    [InlineData(0.841621, 0.8)]
    [InlineData(-3.090232, 0.001)]
    [InlineData(0, 0.5)]
    public void The_usual_quantiles_are_where_the_tables_have_them(double x, double probability) =>
        Close.To(probability, Normal.Cdf(x), 2e-7);

    /// <summary>
    /// MathNet's error function as oracle, every 0.001. Largest found: 6.7e-16 absolute; relative 3e-13, just inside −3,
    /// where the series is taken from a half, and at the far end, where x²/2 loses digits as an exponent on both sides.
    /// </summary>
    [Fact]
    public void It_agrees_with_a_library_all_along_the_line()
    {
        for (int i = -37_000; i <= 37_000; i++)
        {
            double x = i / 1000.0;
            double oracle = SpecialFunctions.Erfc(-x / Math.Sqrt(2)) / 2;

            Close.To(oracle, Normal.Cdf(x), Math.Min(8e-16, 4e-13 * oracle), "Φ");
        }
    }

    [Property]
    public void Above_is_below_the_mirror_image(short thousandths)
    {
        double x = thousandths / 1000.0;

        Assert.Equal(Normal.Cdf(-x), Normal.Above(x));
        Close.To(1, Normal.Cdf(x) + Normal.Above(x), 1e-15);
    }

    [Property]
    public void It_never_falls(short thousandths, byte more)
    {
        double x = thousandths / 1000.0;

        Assert.True(Normal.Cdf(x + (more / 1000.0)) >= Normal.Cdf(x));
    }

    [Fact]
    public void It_does_not_jump_where_one_formula_gives_way_to_the_other()
    {
        foreach (double at in new[] { -3.0, 3.0 })
        {
            double across = Normal.Cdf(Math.BitIncrement(at)) - Normal.Cdf(Math.BitDecrement(at));

            Assert.InRange(across, 0, 5e-16);
        }
    }

    [Fact]
    public void Its_ends_are_0_and_1_and_what_is_no_number_stays_none()
    {
        Assert.Equal(0, Normal.Cdf(double.NegativeInfinity));
        Assert.Equal(1, Normal.Cdf(double.PositiveInfinity));
        Assert.Equal(1, Normal.Above(double.NegativeInfinity));
        Assert.Equal(0, Normal.Above(double.PositiveInfinity));
        Assert.True(double.IsNaN(Normal.Cdf(double.NaN)));
    }

    [Fact]
    public void The_density_is_the_slope_of_the_probability()
    {
        for (double x = -6; x <= 6; x += 0.125)
        {
            const double h = 1e-4;

            // A central difference: off by h² and by rounding over h.
            Close.To((Normal.Cdf(x + h) - Normal.Cdf(x - h)) / (2 * h), Normal.Density(x), 5e-9);
        }

        Close.To(0.3989422804014327, Normal.Density(0), 1e-16);
    }
}
