using System.Globalization;
using System.Text;
using Spectre.Console.Rendering;

namespace Gatewright.Cli.Drawing;

/// <summary>Text as a terminal lays it out: in cells, where a letter may take two and an accent none.</summary>
internal static class CellText
{
    /// <summary>Columns that a text takes.</summary>
    public static int Width(string text)
    {
        if (Ascii.IsValid(text))
        {
            return text.Length;
        }

        int width = 0;
        for (int at = 0; at < text.Length;)
        {
            int length = StringInfo.GetNextTextElementLength(text, at);
            width += ElementWidth(text.AsSpan(at, length));
            at += length;
        }

        return width;
    }

    /// <summary>The longest beginning of a text that fits, at least one character of it.</summary>
    public static string Head(string text, int width)
    {
        int used = 0;
        int at = 0;
        while (at < text.Length)
        {
            int length = StringInfo.GetNextTextElementLength(text, at);
            used += ElementWidth(text.AsSpan(at, length));
            if (used > width && at > 0)
            {
                break;
            }

            at += length;
        }

        return text[..at];
    }

    /// <summary>The text, tame, if it fits; otherwise its beginning and "…".</summary>
    public static string Fit(string text, int width)
    {
        string tame = Tame(text);
        return Width(tame) <= width ? tame : Head(tame, width - 1) + "…";
    }

    /// <summary>
    /// People's own text without what would move the cursor, recolour the screen or turn the line round: a file from
    /// elsewhere must not be able to write over a verdict.
    /// </summary>
    public static string Tame(string text) =>
        text.AsSpan().ContainsAnyExceptInRange(' ', '~') && text.EnumerateRunes().Any(IsWild)
            ? string.Concat(text.EnumerateRunes().Select(rune => IsWild(rune) ? "\uFFFD" : rune.ToString()))
            : text;

    private static bool IsWild(Rune rune) =>
        Rune.IsControl(rune)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0x200E or 0x200F or 0x061C;

    /// <summary>An element is as wide as its widest part: an accent or a joiner adds nothing to its letter.</summary>
    private static int ElementWidth(ReadOnlySpan<char> element)
    {
        int widest = 0;
        foreach (Rune rune in element.EnumerateRunes())
        {
            widest = Math.Max(widest, rune.IsAscii || IsLine(rune) ? 1 : new Segment(rune.ToString()).CellCount());
        }

        return widest;
    }

    /// <summary>The drawing's own characters: asking the library's tables about each of them is most of the time a page takes.</summary>
    private static bool IsLine(Rune rune) => rune.Value is (>= 0x2500 and <= 0x25FF) or '°' or '±' or '…';
}
