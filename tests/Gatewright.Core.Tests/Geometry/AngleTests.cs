using System.Globalization;
using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

public class AngleTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void An_angle_is_finite(double value)
    {
        var inDegrees = Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromDegrees(value));
        var inRadians = Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromRadians(value));

        Assert.StartsWith("An angle must be a finite number of degrees.", inDegrees.Message, StringComparison.Ordinal);
        Assert.Equal("degrees", inDegrees.ParamName);
        Assert.Equal("degrees", inRadians.ParamName);
    }

    [Fact]
    public void A_sum_that_leaves_the_numbers_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Angle.FromDegrees(double.MaxValue) + Angle.FromDegrees(double.MaxValue));

    [Property]
    public void What_was_typed_is_what_is_read_back(short halfDegrees) =>
        Assert.Equal(halfDegrees / 2.0, Angle.FromDegrees(halfDegrees / 2.0).Degrees);

    [Fact]
    public void Half_a_turn_is_pi()
    {
        // Exact: 180 / (180/π) rounds back to π's double.
        Assert.Equal(Math.PI, Angle.FromDegrees(180).Radians);
        Close.To(90, Angle.FromRadians(Math.PI / 2).Degrees, 1e-14);
    }

    [Fact]
    public void The_default_is_no_angle() => Assert.Equal(Angle.Zero, default);

    [Fact]
    public void Angles_order_as_their_degrees_do()
    {
        Angle low = Angle.FromDegrees(-1);
        Angle high = Angle.FromDegrees(2);

        Assert.True(low < high && high > low && low <= high && high >= low);
        Assert.False(low > high || high < low || low >= high || high <= low);
        Assert.True(low.CompareTo(high) < 0);
    }

    [Fact]
    public void Sums_differences_and_multiples_are_those_of_the_degrees()
    {
        Angle angle = Angle.FromDegrees(1.5);

        Assert.Equal(4.5, (angle + Angle.FromDegrees(3)).Degrees);
        Assert.Equal(-1.5, (angle - Angle.FromDegrees(3)).Degrees);
        Assert.Equal(-1.5, (-angle).Degrees);
        Assert.Equal(0.75, (0.5 * angle).Degrees);
    }

    [Fact]
    public void An_angle_is_written_with_a_point_in_every_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("-4.5°", Angle.FromDegrees(-4.5).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_kind_of_angle_refuses_what_is_no_number()
    {
        Action<double>[] makers =
        [
            x => BowHigh.FromDegrees(x),
            x => PortLow.FromDegrees(x),
            x => GatePitch.FromDegrees(x),
            x => LeanAft.FromDegrees(x),
            x => LeanOut.FromDegrees(x),
            x => OarAngle.FromDegrees(x),
            x => Pitch.FromDegrees(x),
            x => SleeveError.FromDegrees(x),
        ];

        foreach (Action<double> make in makers)
        {
            make(1);
            Assert.Throws<ArgumentOutOfRangeException>(() => make(double.NaN));
            Assert.Throws<ArgumentOutOfRangeException>(() => make(double.PositiveInfinity));
        }
    }
}
