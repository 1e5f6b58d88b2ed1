namespace Gatewright.Core.Geometry;

/// <summary>ε: the angle that an oar's sleeve adds between its flat and the blade.</summary>
/// <remarks>Positive: the blade's top leans further to the stern than the sleeve's flat does. 0 for a true oar.</remarks>
/// <param name="Angle">The angle.</param>
public readonly record struct SleeveError(Angle Angle)
{
    /// <summary>The angle in degrees.</summary>
    public double Degrees => Angle.Degrees;

    /// <summary>So many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static SleeveError FromDegrees(double degrees) => new(Angle.FromDegrees(degrees));

    /// <inheritdoc/>
    public override string ToString() => Angle.ToString();
}
