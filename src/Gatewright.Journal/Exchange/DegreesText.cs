using System.Globalization;

namespace Gatewright.Journal.Exchange;

/// <summary>A number as people and spreadsheets write it: "4.5", "4,5", "−1", "4.5°".</summary>
/// <remarks>
/// A decimal comma can only be met where the comma does not separate columns, or in quote marks: so it is never taken
/// for anything else, and thousands are not grouped.
/// </remarks>
internal static class DegreesText
{
    /// <summary>Longer numbers than this are nobody's reading.</summary>
    private const int Longest = 40;

    /// <summary>With no more digits than this, whole number and power of ten are exact, and so their quotient is rounded once.</summary>
    private const int ExactDigits = 15;

    private static readonly double[] s_powersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>The number, finite, or null.</summary>
    public static double? Find(ReadOnlySpan<char> text)
    {
        if (text is [.., '°' or 'º'])
        {
            text = CellText.Trim(text[..^1]);
        }

        bool isNegative = text.Length > 0 && CellText.IsDash(text[0]);
        if (isNegative || text is ['+', ..])
        {
            text = CellText.Trim(text[1..]);
        }

        double? magnitude = FindShort(text) ?? FindLong(text);
        return isNegative ? -magnitude : magnitude;
    }

    private static double? FindShort(ReadOnlySpan<char> text)
    {
        long digits = 0;
        int count = 0;
        int decimals = -1;
        foreach (char c in text)
        {
            if (char.IsAsciiDigit(c))
            {
                digits = (10 * digits) + (c - '0');
                count++;
                decimals += decimals < 0 ? 0 : 1;
            }
            else if (c is '.' or ',' && decimals < 0)
            {
                decimals = 0;
            }
            else
            {
                return null;
            }

            if (count > ExactDigits)
            {
                return null;
            }
        }

        return count == 0 ? null : digits / s_powersOfTen[Math.Max(decimals, 0)];
    }

    /// <summary>Numbers of many digits, and those with a power of ten behind them.</summary>
    private static double? FindLong(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest || text.IsEmpty || !(char.IsAsciiDigit(text[0]) || text[0] is '.' or ','))
        {
            return null;
        }

        Span<char> invariant = stackalloc char[Longest];
        text.Replace(invariant, ',', '.');
        const NumberStyles Style = NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(invariant[..text.Length], Style, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : null;
    }
}
