namespace Gatewright.Cli.Drawing;

/// <summary>Breaks text into lines at its blanks.</summary>
internal static class WordWrap
{
    /// <summary>Lines of at most so many columns; a word longer than that is broken where it must be.</summary>
    public static IEnumerable<string> Lines(string text, int width)
    {
        string line = string.Empty;
        foreach (string word in Words(text).SelectMany(word => Pieces(word, width)))
        {
            if (line.Length > 0 && CellText.Width(line) + 1 + CellText.Width(word) > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }

    /// <summary>What stands between blanks, but "92 %" and "3.0° ± 0.4" are never torn apart.</summary>
    private static IEnumerable<string> Words(string text)
    {
        string[] parts = text.Split(' ');
        for (int at = 0; at < parts.Length;)
        {
            string word = parts[at++];
            while (at < parts.Length && (parts[at] is "±" || parts[at].StartsWith('%') || word.EndsWith('±')))
            {
                word = $"{word} {parts[at++]}";
            }

            yield return word;
        }
    }

    private static IEnumerable<string> Pieces(string word, int width)
    {
        while (CellText.Width(word) > width)
        {
            string head = CellText.Head(word, width);
            yield return head;
            word = word[head.Length..];
        }

        yield return word;
    }
}
