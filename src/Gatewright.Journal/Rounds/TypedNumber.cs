using System.Globalization;

namespace Gatewright.Journal.Rounds;

/// <summary>A number as somebody types it at a boat: with a comma or a point, any minus a keyboard has, and a degree sign or none.</summary>
internal static class TypedNumber
{
    private const int MostDecimals = 2;

    /// <summary>The value; null for what is not a number, or has more than two decimals.</summary>
    public static decimal? Parse(string? text)
    {
        string plain = (text ?? string.Empty).Trim().Replace('\u2212', '-').Replace('\u2013', '-').Replace(',', '.').TrimEnd('\u00b0');
        return decimal.TryParse(
            plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            && value.Scale <= MostDecimals
            ? value
            : null;
    }
}
