using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Mending;

namespace Gatewright.Core.Tests.Mending;

/// <summary>tilt = atan(t / L), against tables of tapers and sine bars.</summary>
public class ShimTests
{
    /// <remarks>Derived from the relation itself, three decimals: no table of shims under pins was found.</remarks>
    [Theory]
    [InlineData(1, 57.3, 1.000)]
    [InlineData(1, 100, 0.573)]
    [InlineData(2, 100, 1.146)]
    [InlineData(1, 150, 0.382)]
    public void A_shim_tilts_by_the_angle_whose_tangent_is_thickness_over_base(double thickness, double length, double degrees) =>
        Assert.Equal(degrees, Shim.Tilt(thickness, length).Degrees, 0.0005);

    /// <remarks>
    /// Turning and Boring Tapers, Derry Collard, 1902: taper per inch by included angle, half of it on either side. Its
    /// last digits are off by one; its 4° is a misprint and not used.
    /// </remarks>
    [Theory]
    [InlineData(1, 0.01746)]
    [InlineData(2, 0.03490)]
    [InlineData(3, 0.05236)]
    [InlineData(5, 0.08732)]
    public void A_taper_has_a_shim_of_half_its_angle_on_either_side(double included, double perInch) =>
        Assert.Equal(perInch, 2 * Shim.ThicknessMm(Angle.FromDegrees(included / 2), 1), 0.000015);

    /// <remarks>
    /// Machinery's Handbook, 31st edition, page 695, a 5-inch sine bar. The bar is the hypotenuse: its base is 5 cos α.
    /// </remarks>
    [Theory]
    [InlineData(31, 15, 2.5939)]
    [InlineData(12, 0, 1.03956)]
    [InlineData(9, 0, 0.78217)]
    public void Under_a_sine_bar_the_thickness_is_its_height(int degrees, int minutes, double height)
    {
        Angle angle = Angle.FromDegrees(degrees + (minutes / 60.0));

        // To the printed digits: at least four decimals.
        Assert.Equal(height, Shim.ThicknessMm(angle, 5 * Math.Cos(angle.Radians)), 0.00005);
    }

    /// <remarks>Machinery's Handbook, 31st edition, page 695: a taper of 6⅛ inches in a foot is 28°38′1″; printed to 1″.</remarks>
    [Fact]
    public void A_taper_of_six_and_an_eighth_in_a_foot_is_the_handbooks_angle() =>
        Assert.Equal(28 + (38 / 60.0) + (1 / 3600.0), 2 * Shim.Tilt(6.125 / 2, 12).Degrees, 1.5 / 3600);

    /// <remarks>WYLER, Compendium of inclination measurement: 1° is 17.4551 mm in a metre, 1 mm in a metre is 206.265″.</remarks>
    [Fact]
    public void A_degree_over_a_metre_is_what_inclinometers_are_marked_with()
    {
        Assert.Equal(17.4551, Shim.ThicknessMm(Angle.FromDegrees(1), 1000), 0.00005);
        Assert.Equal(206.265, 3600 * Shim.Tilt(1, 1000).Degrees, 0.0005);
    }

    [Property]
    public void Thickness_and_tilt_undo_each_other(int tenths, byte millimetres)
    {
        double thickness = tenths % 300 / 10.0;
        double length = 20 + millimetres;

        Assert.Equal(thickness, Shim.ThicknessMm(Shim.Tilt(thickness, length), length), 1e-9);
        Assert.Equal(Math.Sign(thickness), Math.Sign(Shim.Tilt(thickness, length).Degrees));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-60)]
    [InlineData(double.NaN)]
    public void A_shim_needs_a_base(double length)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Shim.Tilt(1, length));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shim.ThicknessMm(Angle.FromDegrees(1), length));
    }

    /// <remarks>A whole turn is the shaft's girth, π × 46 = 144.513; a quarter turn a quarter of it.</remarks>
    [Theory]
    [InlineData(360, 46, 144.513)]
    [InlineData(90, 46, 36.128)]
    [InlineData(1, 46, 0.401)]
    public void Round_a_shaft_the_distance_is_its_girths_share(double degrees, double diameter, double millimetres) =>
        Assert.Equal(millimetres, SleeveRemedy.RoundTheShaftMm(Angle.FromDegrees(degrees), diameter), 0.0005);
}
