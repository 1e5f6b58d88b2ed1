using System.Globalization;
using System.Text;

namespace Gatewright.Journal.Exchange;

/// <summary>What a person typed, as a message shows it: on one line, not too long, and nothing that moves the cursor.</summary>
internal static class ShownText
{
    private const int Longest = 40;

    public static string Of(ReadOnlySpan<char> text)
    {
        text = CellText.Trim(text);
        var shown = new StringBuilder(Math.Min(text.Length, Longest) + 1);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (shown.Length + rune.Utf16SequenceLength > Longest)
            {
                return shown.Append('…').ToString();
            }

            shown.Append(Harmless(rune));
        }

        return shown.ToString();
    }

    private static Rune Harmless(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => new Rune(' '),
        UnicodeCategory.Format or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned => Rune.ReplacementChar,
        _ => rune,
    };
}
