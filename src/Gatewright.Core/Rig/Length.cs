using System.Globalization;

namespace Gatewright.Core.Rig;

/// <summary>
/// A length of the rig that knows its unit. It is kept in centimetres, as the trade writes it, so that a value typed in is the
/// value read back.
/// </summary>
/// <remarks>
/// Finite always, of either sign: a place on the track, or a difference, may lie below 0. The default is 0. Equality is exact.
/// </remarks>
public readonly record struct Length : IComparable<Length>
{
    // Exact by definition (international yard and pound agreement, 1959).
    private const double CentimetresPerInch = 2.54;

    private Length(double centimetres) => Centimetres = centimetres;

    /// <summary>The length in centimetres.</summary>
    public double Centimetres { get; }

    /// <summary>The length in millimetres.</summary>
    public double Millimetres => Centimetres * 10;

    /// <summary>The length in inches of 2.54 cm.</summary>
    public double Inches => Centimetres / CentimetresPerInch;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>A length of so many centimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static Length FromCentimetres(double centimetres) => double.IsFinite(centimetres)
        ? new(centimetres)
        : throw new ArgumentOutOfRangeException(nameof(centimetres), centimetres, "A length must be a finite number of centimetres.");

    /// <summary>A length of so many millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static Length FromMillimetres(double millimetres) => FromCentimetres(millimetres / 10);

    /// <summary>A length of so many inches of 2.54 cm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static Length FromInches(double inches) => FromCentimetres(inches * CentimetresPerInch);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Centimetres.CompareTo(other.Centimetres);

    /// <summary>The sum.</summary>
    public static Length operator +(Length left, Length right) => FromCentimetres(left.Centimetres + right.Centimetres);

    /// <summary>The difference.</summary>
    public static Length operator -(Length left, Length right) => FromCentimetres(left.Centimetres - right.Centimetres);

    /// <summary>The opposite.</summary>
    public static Length operator -(Length length) => new(-length.Centimetres);

    /// <summary>A multiple.</summary>
    public static Length operator *(double factor, Length length) => FromCentimetres(factor * length.Centimetres);

    /// <summary>How often one goes into the other.</summary>
    /// <exception cref="DivideByZeroException">The right is 0.</exception>
    public static double operator /(Length left, Length right) => right.Centimetres == 0
        ? throw new DivideByZeroException("A length cannot be divided by no length.")
        : left.Centimetres / right.Centimetres;

    /// <summary>Whether one is less than another.</summary>
    public static bool operator <(Length left, Length right) => left.Centimetres < right.Centimetres;

    /// <summary>Whether one is greater than another.</summary>
    public static bool operator >(Length left, Length right) => left.Centimetres > right.Centimetres;

    /// <summary>Whether one is at most another.</summary>
    public static bool operator <=(Length left, Length right) => left.Centimetres <= right.Centimetres;

    /// <summary>Whether one is at least another.</summary>
    public static bool operator >=(Length left, Length right) => left.Centimetres >= right.Centimetres;

    /// <summary>Centimetres in the invariant culture: "86.5 cm".</summary>
    public override string ToString() => Centimetres.ToString("0.##", CultureInfo.InvariantCulture) + " cm";
}
