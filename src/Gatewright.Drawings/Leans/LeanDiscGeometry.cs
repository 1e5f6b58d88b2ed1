using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Drawings.Leans;

/// <summary>
/// The top of a pin seen from above, as in the plan: bow up, and a port pin's way from the hull on the left. The middle is
/// an upright pin.
/// </summary>
public sealed class LeanDiscGeometry
{
    /// <summary>How wide and high the drawing is.</summary>
    public const double Size = 300;

    /// <summary>From the middle to the outermost ring.</summary>
    public const double Radius = 104;

    private readonly Side _side;

    /// <summary>The disc of a lean; wide enough for it and its ellipse, in whole degrees, 3 at least.</summary>
    /// <param name="side">The side the gate stands on.</param>
    /// <param name="lean">The lean.</param>
    /// <param name="covariance">Of the lean aft and the lean out, in degrees squared, in this order; null for none.</param>
    public LeanDiscGeometry(Side side, PinLean lean, CovarianceMatrix? covariance)
    {
        _side = side;
        Ellipse = covariance is null ? null : LeanEllipse.Of(covariance);
        double furthest = Math.Sqrt(Square(lean.Aft.Degrees) + Square(lean.Out.Degrees)) + (Ellipse?.Major ?? 0);
        Most = Math.Max(3, (int)Math.Ceiling(furthest));
        Point = At(lean.Aft.Degrees, lean.Out.Degrees);
    }

    /// <summary>The middle: upright both ways.</summary>
    public static Spot Middle => new(Size / 2, Size / 2);

    /// <summary>Degrees of the outermost ring.</summary>
    public int Most { get; }

    /// <summary>Degrees from ring to ring.</summary>
    public int Each => (Most + 5) / 6;

    /// <summary>Degrees of every ring, the outermost last.</summary>
    public IEnumerable<int> Rings => Enumerable.Range(1, Most).Where(ring => ring % Each == 0 || ring == Most);

    /// <summary>The lean itself.</summary>
    public Spot Point { get; }

    /// <summary>Its ellipse in degrees; null where no uncertainty was given.</summary>
    public LeanEllipse? Ellipse { get; }

    /// <summary>How the longer half axis lies on the drawing, from the right downwards, in degrees.</summary>
    public double EllipseTurn => Outward * (90 - (Ellipse?.Turn ?? 0));

    /// <summary>−1 where away from the hull is on the left.</summary>
    public int Outward => -_side.Sign();

    /// <summary>So many degrees as a length.</summary>
    public double Length(double degrees) => degrees * Radius / Most;

    /// <summary>The place of a lean.</summary>
    public Spot At(double aft, double @out) => Middle.Plus(Outward * Length(@out), Length(aft));

    private static double Square(double value) => value * value;
}
