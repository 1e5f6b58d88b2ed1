namespace Gatewright.Core.Geometry;

/// <summary>β: how far the hull's keel line rises to the bow, as the boat lies.</summary>
/// <remarks>Positive: bow high; negative: bow low.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct BowHigh(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static BowHigh FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
