using System.Globalization;

namespace Gatewright.Drawings;

/// <summary>Numbers as SVG reads them, whatever the culture.</summary>
internal static class Svg
{
    /// <summary>A length or a place, to a hundredth of a unit: 12.346 → "12.35".</summary>
    public static string N(double value) => Write(value, 2, "0.##");

    /// <summary>An angle in degrees, fine enough that what is drawn is what was computed: "4.3217".</summary>
    public static string Turn(double degrees) => Write(degrees, 4, "0.####");

    /// <summary>"translate(12 34.5)".</summary>
    public static string At(Spot spot) => $"translate({N(spot.X)} {N(spot.Y)})";

    /// <summary>"rotate(4.3217)".</summary>
    public static string Rotate(double degrees) => $"rotate({Turn(degrees)})";

    /// <summary>Words as they are written between tags.</summary>
    public static string Words(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);

    // Adding nothing turns a negative zero, which would be written "-0", into a plain one.
    private static string Write(double value, int decimals, string format) =>
        (Math.Round(value, decimals) + 0.0).ToString(format, CultureInfo.InvariantCulture);
}
