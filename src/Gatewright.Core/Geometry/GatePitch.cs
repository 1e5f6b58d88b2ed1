namespace Gatewright.Core.Geometry;

/// <summary>γ: the angle built into gate and insert, relative to the pin.</summary>
/// <remarks>Positive when the top of the face leans to the stern of the pin. Not a pitch: it becomes one only through the pin's lean and the oar's angle.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct GatePitch(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static GatePitch FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
