namespace Gatewright.Core.Geometry;

/// <summary>The angle of the working face (or the blade) from plumb: what a pitch gauge shows on a level boat.</summary>
/// <remarks>Positive when the top leans to the stern. The default is 0: plumb.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct Pitch(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static Pitch FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
