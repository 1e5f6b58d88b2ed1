namespace Gatewright.Core.Geometry;

/// <summary>o: the pin's lean away from the hull, as seen square-on from the end of the boat.</summary>
/// <remarks>Positive: the top of the pin stands further from the hull than its foot. Negative: inward. Within ±45° here.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct LeanOut(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static LeanOut FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
