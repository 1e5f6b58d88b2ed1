using Gatewright.Core;

namespace Gatewright.Journal.Exchange;

/// <summary>A class of boat as people and spreadsheets write it: "4-", "4 −", "8X+", "2×", and "-4" for "4-".</summary>
internal static class ClassText
{
    private const int Longest = 8;

    /// <summary>The class, or null.</summary>
    /// <param name="text">What is written.</param>
    /// <param name="isTurned">Whether it stands there as the negative number that a spreadsheet makes of "4-".</param>
    public static BoatClass? Find(ReadOnlySpan<char> text, out bool isTurned)
    {
        isTurned = false;
        Span<char> plain = stackalloc char[Longest];
        if (!TryPlain(text, plain, out int length))
        {
            return null;
        }

        plain = plain[..length];
        if (length == 2 && plain[0] == '-')
        {
            isTurned = true;
            plain.Reverse();
        }

        return BoatClass.TryParse(plain);
    }

    private static bool TryPlain(ReadOnlySpan<char> text, Span<char> plain, out int length)
    {
        length = 0;
        foreach (char c in text)
        {
            if (CellText.IsSpace(c))
            {
                continue;
            }

            if (length == plain.Length)
            {
                return false;
            }

            plain[length++] = CellText.IsDash(c) ? '-' : c == '×' ? 'x' : c;
        }

        return true;
    }
}
