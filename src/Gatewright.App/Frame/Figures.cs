using System.Globalization;

namespace Gatewright.App.Frame;

/// <summary>Numbers as people type and read them here.</summary>
public static class Figures
{
    /// <summary>The minus that people read; machines write a hyphen.</summary>
    public const string TrueMinus = "\u2212";

    /// <summary>A number as it was typed, with a point or a comma, with any minus; null where it is none.</summary>
    public static decimal? Read(string? text)
    {
        string plain = (text ?? string.Empty).Trim().Replace(TrueMinus, "-", StringComparison.Ordinal).Replace(',', '.');
        return decimal.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? value
            : null;
    }

    /// <summary>A whole number of 0 or more as it was typed; null where it is none.</summary>
    public static int? Count(string? text) =>
        int.TryParse((text ?? string.Empty).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : null;

    /// <summary>A number as people read it: "−0.5", in German "−0,5".</summary>
    public static string Text(decimal value, string format = "0.###") =>
        (value < 0 ? TrueMinus : string.Empty) + Math.Abs(value).ToString(format, CultureInfo.CurrentCulture);

    /// <summary>A number with its sign: "+0.5", "−0.5", "0".</summary>
    public static string WithSign(decimal value, string format = "0.0#") => (value > 0 ? "+" : string.Empty) + Text(value, format);

    /// <summary>What a gauge shows, its unit said elsewhere: "4.5", "−0.5", two decimals where two were typed.</summary>
    public static string Shown(decimal value) => Text(value, "0.0#");

    /// <summary>The same for a machine: "-0.5".</summary>
    public static string Plain(decimal value) => value.ToString("0.0#", CultureInfo.InvariantCulture);

    /// <summary>Degrees: "4.5°".</summary>
    public static string Degrees(decimal value) => Text(value, "0.0##") + "°";

    /// <summary>Degrees of something that was worked out, to so many figures after the mark: "0.25°".</summary>
    public static string Degrees(double value, int decimals = 2) =>
        Text(Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero), "0." + new string('0', decimals)) + "°";

    /// <summary>A time of day by the device's clock: "18:05".</summary>
    public static string Clock(DateTimeOffset moment) => moment.LocalDateTime.ToString("HH:mm", CultureInfo.CurrentCulture);

    /// <summary>What somebody is typing, of the other sign.</summary>
    public static string Turned(string typed) => typed.StartsWith('\u2212') || typed.StartsWith('-') ? typed[1..] : TrueMinus + typed;

    /// <summary>A number as the journal has it, with a point whatever the language.</summary>
    public static string Recorded(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
