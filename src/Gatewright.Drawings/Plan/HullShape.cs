namespace Gatewright.Drawings.Plan;

/// <summary>
/// A hull seen from above: half its width is b (1 − |s|⁴·⁵), with s from −1 at the bow to 1 at the stern. Slender, parallel
/// amidships, sharp at both ends.
/// </summary>
/// <param name="Bow">The tip of the bow.</param>
/// <param name="Length">From tip to tip.</param>
/// <param name="Beam">b, half the width amidships.</param>
public sealed record HullShape(Spot Bow, double Length, double Beam)
{
    private const double Fullness = 4.5;

    /// <summary>Places along the hull that its edge is drawn through, so that no corner is seen: a unit of a thumbnail is small.</summary>
    private int Steps => Length < 100 ? 20 : 48;

    /// <summary>Half the hull's width at a place along it; 0 beyond its tips.</summary>
    public double HalfWidthAt(double y)
    {
        double s = Math.Abs((2 * (y - Bow.Y) / Length) - 1);
        return s >= 1 ? 0 : Beam * (1 - Math.Pow(s, Fullness));
    }

    /// <summary>The outline as a path.</summary>
    public string Path => Around(Bow.Y, Bow.Y + Length, 1).Close().ToString();

    /// <summary>The edge of what is open between two places along the hull, drawn to a point towards the bow.</summary>
    public string Cockpit(double from, double to, double point)
    {
        Outline edge = Around(from, to, 0.72);
        return edge.Line(new(Bow.X, from - point)).Close().ToString();
    }

    private Outline Around(double from, double to, double share)
    {
        double[] along = [.. Enumerable.Range(0, Steps + 1).Select(i => from + ((to - from) * i / Steps))];
        return Outline.Through(
        [
            .. along.Select(y => new Spot(Bow.X + (share * HalfWidthAt(y)), y)),
            .. along.Reverse().Select(y => new Spot(Bow.X - (share * HalfWidthAt(y)), y)),
        ]);
    }
}
