namespace Gatewright.Drawings;

/// <summary>A place on a drawing, in its own units: x to the right, y down.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>A place so far from this one.</summary>
    public Spot Plus(double x, double y) => new(X + x, Y + y);

    /// <summary>
    /// A place at a distance and an angle from plumb: 0 is straight up, positive turns as a clock does.
    /// </summary>
    public Spot Towards(double degrees, double distance)
    {
        (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180);
        return new(X + (distance * sine), Y - (distance * cosine));
    }
}
