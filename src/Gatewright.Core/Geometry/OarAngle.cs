namespace Gatewright.Core.Geometry;

/// <summary>θ: where the oar is in the stroke, as its rotation about the pin.</summary>
/// <remarks>0 abeam, positive towards the catch, negative towards the finish; −90° to 90° in rowing. The default is abeam.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct OarAngle(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static OarAngle FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
