using System.Globalization;

namespace Gatewright.Core.Geometry;

/// <summary>
/// A plane angle that knows its unit. It is kept in degrees, as the gauge shows it, so that a value typed in is
/// the value read back; radians are made where a formula needs them.
/// </summary>
/// <remarks>
/// Finite always; the default is 0. Equality is exact. What the angle is an angle of (a pitch, a lean, an oar's place in
/// the stroke) is said by the type that wraps it.
/// </remarks>
public readonly record struct Angle : IComparable<Angle>
{
    private const double DegreesPerRadian = 180 / Math.PI;

    private Angle(double degrees) => Degrees = degrees;

    /// <summary>The angle in degrees.</summary>
    public double Degrees { get; }

    /// <summary>The angle in radians: 180° → 3.14159….</summary>
    public double Radians => Degrees / DegreesPerRadian;

    /// <summary>No angle.</summary>
    public static Angle Zero => default;

    /// <summary>An angle of so many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static Angle FromDegrees(double degrees) => double.IsFinite(degrees)
        ? new(degrees)
        : throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "An angle must be a finite number of degrees.");

    /// <summary>An angle of so many radians: π/2 → 90°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static Angle FromRadians(double radians) => FromDegrees(radians * DegreesPerRadian);

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Degrees.CompareTo(other.Degrees);

    /// <summary>The sum.</summary>
    public static Angle operator +(Angle left, Angle right) => FromDegrees(left.Degrees + right.Degrees);

    /// <summary>The difference.</summary>
    public static Angle operator -(Angle left, Angle right) => FromDegrees(left.Degrees - right.Degrees);

    /// <summary>The opposite.</summary>
    public static Angle operator -(Angle angle) => new(-angle.Degrees);

    /// <summary>A multiple.</summary>
    public static Angle operator *(double factor, Angle angle) => FromDegrees(factor * angle.Degrees);

    /// <summary>Whether one angle is less than another.</summary>
    public static bool operator <(Angle left, Angle right) => left.Degrees < right.Degrees;

    /// <summary>Whether one angle is greater than another.</summary>
    public static bool operator >(Angle left, Angle right) => left.Degrees > right.Degrees;

    /// <summary>Whether one angle is at most another.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Degrees <= right.Degrees;

    /// <summary>Whether one angle is at least another.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Degrees >= right.Degrees;

    /// <summary>Degrees in the invariant culture: "4.5°".</summary>
    public override string ToString() => Degrees.ToString("0.####", CultureInfo.InvariantCulture) + "°";
}
