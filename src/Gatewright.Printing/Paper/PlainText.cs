using System.Globalization;
using System.Text;

namespace Gatewright.Printing.Paper;

/// <summary>People's text as it can be printed in a line: no line ends, no characters that only order others about.</summary>
internal static class PlainText
{
    /// <summary>The text, each run of blanks and line ends one blank, composed so that an accent finds its letter's own glyph.</summary>
    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune) || Rune.IsControl(rune))
            {
                if (plain.Length > 0 && plain[^1] != ' ')
                {
                    plain.Append(' ');
                }
            }
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse))
            {
                plain.Append(rune);
            }
        }

        return plain.ToString().TrimEnd().Normalize();
    }
}
