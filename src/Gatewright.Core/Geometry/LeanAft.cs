namespace Gatewright.Core.Geometry;

/// <summary>a: the pin's lean to the stern, as seen square-on from the side.</summary>
/// <remarks>Positive: the top of the pin stands nearer the stern than its foot. Negative: forward. Within ±45° here.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct LeanAft(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static LeanAft FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
