namespace Gatewright.Journal.Exchange;

/// <summary>The characters of a cell as spreadsheets and word processors leave them.</summary>
internal static class CellText
{
    /// <summary>Spaces of every width, and the marks of no width that come along when text is copied.</summary>
    public static bool IsSpace(char c) =>
        char.IsWhiteSpace(c) || c is '\u200B' or '\u200E' or '\u200F' or '\u2060' or '\uFEFF';

    /// <summary>The hyphen, the minus and the dashes into which either is changed as one types.</summary>
    public static bool IsDash(char c) => c is '-' or (>= '\u2010' and <= '\u2015') or '\u2212' or '\uFE58' or '\uFE63' or '\uFF0D';

    public static ReadOnlySpan<char> Trim(ReadOnlySpan<char> text)
    {
        int start = 0;
        int end = text.Length;
        while (start < end && IsSpace(text[start]))
        {
            start++;
        }

        while (end > start && IsSpace(text[end - 1]))
        {
            end--;
        }

        return text[start..end];
    }

    /// <summary>Whether a text is a name of ours, in any case, whatever joins its parts: "Bow High" is bow_high.</summary>
    public static bool SameName(ReadOnlySpan<char> text, ReadOnlySpan<char> name)
    {
        int t = 0;
        int n = 0;
        while (true)
        {
            t = SkipJoints(text, t);
            n = SkipJoints(name, n);
            if (t == text.Length || n == name.Length)
            {
                return t == text.Length && n == name.Length;
            }

            if (char.ToLowerInvariant(text[t++]) != name[n++])
            {
                return false;
            }
        }
    }

    private static int SkipJoints(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && (text[at] == '_' || IsDash(text[at]) || IsSpace(text[at])))
        {
            at++;
        }

        return at;
    }
}
