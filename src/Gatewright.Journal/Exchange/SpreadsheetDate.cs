namespace Gatewright.Journal.Exchange;

/// <summary>
/// Recognises the dates that spreadsheets make of numbers: "4.5" becomes "4. May", "04.05.2026" or "4/5/26" where
/// the sheet's language writes days so.
/// </summary>
internal static class SpreadsheetDate
{
    private const int Longest = 24;

    /// <summary>How months begin in the languages of Europe that use the Latin alphabet.</summary>
    private static readonly string[] s_months =
    [
        "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec",
        "mär", "mrz", "mrt", "mai", "mei", "maj", "mag", "gen", "ene", "fév", "fev", "avr", "abr", "giu", "juin", "juil", "lug",
        "aoû", "ago", "set", "okt", "ott", "out", "dez", "dic", "déc",
    ];

    /// <summary>Whether a text that is no number looks like a date.</summary>
    public static bool IsMeantBy(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest)
        {
            return false;
        }

        int numbers = 0;
        int months = 0;
        int slashes = 0;
        while (!text.IsEmpty)
        {
            int length = LengthOfPart(text);
            ReadOnlySpan<char> part = text[..length];
            if (char.IsAsciiDigit(part[0]))
            {
                numbers++;
            }
            else if (char.IsLetter(part[0]))
            {
                months++;
                if (!IsMonth(part))
                {
                    return false;
                }
            }
            else if (part[0] is not ('.' or '/' or ' ' or ',') && !CellText.IsDash(part[0]) && !CellText.IsSpace(part[0]))
            {
                return false;
            }

            slashes += part[0] == '/' ? 1 : 0;
            text = text[length..];
        }

        return (months == 1 && numbers is 1 or 2) || (months == 0 && (numbers == 3 || (numbers == 2 && slashes == 1)));
    }

    private static int LengthOfPart(ReadOnlySpan<char> text)
    {
        int length = 1;
        while (length < text.Length && KindOf(text[length]) == KindOf(text[0]) && KindOf(text[0]) != 0)
        {
            length++;
        }

        return length;
    }

    private static int KindOf(char c) => char.IsAsciiDigit(c) ? 1 : char.IsLetter(c) ? 2 : 0;

    private static bool IsMonth(ReadOnlySpan<char> word)
    {
        foreach (string month in s_months)
        {
            if (word.StartsWith(month, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
