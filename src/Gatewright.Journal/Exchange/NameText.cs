using System.Text;

namespace Gatewright.Journal.Exchange;

/// <summary>Names that people give: of boats, gauges and racks. They are one name when only case and spaces differ.</summary>
internal static class NameText
{
    /// <summary>The most characters of a name.</summary>
    public const int Longest = 200;

    /// <summary>
    /// In front of a name that a spreadsheet would take for a formula; it is taken off again on reading. A formula in
    /// a file that one member exports would run on another's machine.
    /// </summary>
    private const char Shield = '\'';

    /// <summary>A name as it is kept: every run of spaces made one, the shield taken off.</summary>
    public static string Tidy(ReadOnlySpan<char> text)
    {
        if (IsShielded(text))
        {
            text = text[1..];
        }

        var tidy = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (!CellText.IsSpace(c))
            {
                tidy.Append(c);
            }
            else if (tidy.Length > 0 && tidy[^1] != ' ')
            {
                tidy.Append(' ');
            }
        }

        return tidy.ToString();
    }

    /// <summary>Whether there are characters in it that control a screen or turn the direction of text instead of showing.</summary>
    public static bool HasHiddenCharacters(ReadOnlySpan<char> text)
    {
        foreach (char c in text)
        {
            if ((char.IsControl(c) && !CellText.IsSpace(c)) || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069'))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What two names of one thing have in common, whatever the culture.</summary>
    public static string Key(string name) => name.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant();

    /// <summary>A name as it is written, with a shield when it needs one.</summary>
    public static string Shielded(string name) => StartsFormula(name) || IsShielded(name) ? Shield + name : name;

    private static bool IsShielded(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> rest = text.TrimStart(Shield);
        return rest.Length < text.Length && StartsFormula(rest);
    }

    private static bool StartsFormula(ReadOnlySpan<char> text) => text is ['=' or '+' or '-' or '@', ..];
}
