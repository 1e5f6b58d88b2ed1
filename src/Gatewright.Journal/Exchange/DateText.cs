namespace Gatewright.Journal.Exchange;

/// <summary>A day, year first with hyphens or day first with dots; nothing that two people could read differently.</summary>
internal static class DateText
{
    private const int Earliest = 1900;

    private const int Latest = 2199;

    private const int YearDigits = 4;

    private const int OtherDigits = 2;

    /// <summary>The day, from 1900 to 2199, or null.</summary>
    public static DateOnly? Find(ReadOnlySpan<char> text)
    {
        Span<int> parts = [0, 0, 0];
        Span<int> digits = [0, 0, 0];
        if (!TryParts(text, parts, digits, out char joint))
        {
            return null;
        }

        bool yearFirst = joint == '-';
        int year = yearFirst ? 0 : 2;
        bool hasLengths = digits[year] == YearDigits && digits[1] <= OtherDigits && digits[2 - year] <= OtherDigits;
        return hasLengths ? Day(parts[year], parts[1], parts[2 - year]) : null;
    }

    /// <summary>Three numbers with the same joint between them, a hyphen of any kind or a dot.</summary>
    private static bool TryParts(ReadOnlySpan<char> text, Span<int> parts, Span<int> digits, out char joint)
    {
        int part = 0;
        joint = default;
        foreach (char c in text)
        {
            char plain = CellText.IsDash(c) ? '-' : c;
            if (char.IsAsciiDigit(c) && digits[part] < YearDigits)
            {
                parts[part] = (10 * parts[part]) + (c - '0');
                digits[part]++;
            }
            else if (plain is '-' or '.' && part < 2 && digits[part] > 0 && (part == 0 || plain == joint))
            {
                joint = plain;
                part++;
            }
            else if (!CellText.IsSpace(c))
            {
                return false;
            }
        }

        return part == 2 && digits[2] > 0;
    }

    private static DateOnly? Day(int year, int month, int day)
    {
        bool exists = year is >= Earliest and <= Latest && month is >= 1 and <= 12
            && day >= 1 && day <= DateTime.DaysInMonth(year, month);
        return exists ? new DateOnly(year, month, day) : null;
    }
}
