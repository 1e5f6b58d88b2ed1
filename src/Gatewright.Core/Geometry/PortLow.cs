namespace Gatewright.Core.Geometry;

/// <summary>ρ: how far the hull is rolled with its port side low, as the boat lies.</summary>
/// <remarks>Positive: the port side is the lower one as the boat lies, whether upright or turned over; negative: starboard is.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct PortLow(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static PortLow FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
