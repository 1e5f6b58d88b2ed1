using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;
using Gatewright.Drawings.Leans;

namespace Gatewright.Drawings.Tests.Leans;

public class LeanEllipseTests
{
    /// <summary>√5.991465: the 95 % point of chi squared with 2 degrees of freedom, as tables give it.</summary>
    private const double Root = 2.447747;

    [Theory]
    // Worked by hand: eigenvalues 4 and 1 along the axes, then turned by a quarter, by 45° and by −45°.
    [InlineData(4, 0, 1, 2, 1, 0)]
    [InlineData(1, 0, 4, 2, 1, 90)]
    [InlineData(2.5, 1.5, 2.5, 2, 1, 45)]
    [InlineData(2.5, -1.5, 2.5, 2, 1, -45)]
    // Eigenvalues 5 and 0: all of the uncertainty along the line of slope 2.
    [InlineData(1, 2, 4, 2.236068, 0, 63.434949)]
    public void Its_axes_are_the_eigenvalues(double aft, double both, double @out, double major, double minor, double turn)
    {
        var ellipse = LeanEllipse.Of(new(2, [aft, both, both, @out]));

        Assert.Equal(major * Root, ellipse.Major, 5);
        Assert.Equal(minor * Root, ellipse.Minor, 5);
        Assert.Equal(turn, ellipse.Turn, 5);
    }

    [Fact]
    public void Three_quantities_have_no_ellipse() =>
        Assert.Throws<ArgumentException>(() => LeanEllipse.Of(new(3, new double[9])));

    [Theory]
    [InlineData(Side.Port, -1)]
    [InlineData(Side.Starboard, 1)]
    public void The_disc_lies_as_the_plan_does(Side side, int outward)
    {
        var disc = new LeanDiscGeometry(side, PinLean.FromDegrees(1, 2), null);

        Assert.Equal(3, disc.Most);
        Assert.Equal(LeanDiscGeometry.Radius / 3, disc.Point.Y - LeanDiscGeometry.Middle.Y, 9);
        Assert.Equal(outward * 2 * LeanDiscGeometry.Radius / 3, disc.Point.X - LeanDiscGeometry.Middle.X, 9);
    }

    [Theory]
    [InlineData(Side.Port)]
    [InlineData(Side.Starboard)]
    public void The_longer_axis_points_along_the_correlation(Side side)
    {
        // Aft and out go together, so the ellipse lies along the way from the middle to the point (1° aft, 1° out).
        var disc = new LeanDiscGeometry(side, PinLean.FromDegrees(1, 1), new CovarianceMatrix(2, [0.25, 0.15, 0.15, 0.25]));
        double turn = disc.EllipseTurn * Math.PI / 180;
        double cross = (Math.Cos(turn) * (disc.Point.Y - LeanDiscGeometry.Middle.Y)) - (Math.Sin(turn) * (disc.Point.X - LeanDiscGeometry.Middle.X));

        Assert.Equal(0, cross, 9);
    }

    [Theory]
    [InlineData(0.1, 0.1, 0.1)]
    [InlineData(4, -5, 1.2)]
    [InlineData(-9, 8, 2)]
    public void Point_and_ellipse_are_always_inside(double aft, double @out, double u)
    {
        var disc = new LeanDiscGeometry(Side.Port, PinLean.FromDegrees(aft, @out), new CovarianceMatrix(2, [u * u, 0, 0, u * u]));

        Assert.True(Math.Sqrt((aft * aft) + (@out * @out)) + disc.Ellipse!.Major <= disc.Most);
        Assert.Equal(disc.Most, disc.Rings.Last());
        Assert.InRange(disc.Rings.Count(), 3, 7);
    }
}
