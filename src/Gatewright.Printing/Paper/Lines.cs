namespace Gatewright.Printing.Paper;

/// <summary>Text that takes more than a line, or has to fit into one.</summary>
internal static class Lines
{
    private const string More = "…";

    /// <summary>
    /// A text broken at its blanks, and inside a word only where that is wider than all there is. A sign stays with what it belongs to: no
    /// line begins with "%" or "·", and a figure with its uncertainty is not torn apart.
    /// </summary>
    public static IReadOnlyList<string> Wrap(this Leaf leaf, string text, double width, Lettering lettering)
    {
        var lines = new List<string>();
        string line = string.Empty;
        foreach (string word in Words(PlainText.Of(text)).SelectMany(w => Pieces(leaf, w, width, lettering)))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && leaf.Width(longer, lettering) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>Draws a text in as many lines as it needs; its first line stands on <paramref name="y"/>.</summary>
    /// <returns>Where a line after it would stand.</returns>
    public static double Paragraph(this Leaf leaf, string text, double x, double y, double width, Lettering lettering)
    {
        foreach (string line in leaf.Wrap(text, width, lettering))
        {
            leaf.Text(line, x, y, lettering);
            y += lettering.LineMm;
        }

        return y;
    }

    /// <summary>How high a text is, millimetres.</summary>
    public static double Height(this Leaf leaf, string text, double width, Lettering lettering) =>
        leaf.Wrap(text, width, lettering).Count * lettering.LineMm;

    /// <summary>Draws a text in one line: smaller where it has to be, down to a size, and then only its beginning.</summary>
    public static void Fit(
        this Leaf leaf, string text, double x, double y, double width, Lettering lettering, double least, Align align = Align.Left)
    {
        Lettering fitting = Fitting(leaf, text, width, lettering, least);
        leaf.Text(Head(leaf, PlainText.Of(text), width, fitting), x, y, fitting, align);
    }

    /// <summary>The largest lettering, from one size down to another, in which a text fits; the smallest where it does not.</summary>
    public static Lettering Fitting(this Leaf leaf, string text, double width, Lettering lettering, double least)
    {
        double natural = leaf.Width(text, lettering);
        return natural <= width ? lettering : lettering.At(Math.Max(least, Math.Floor(lettering.Points * width / natural * 4) / 4));
    }

    /// <summary>A text, or as much of its beginning as fits with "…".</summary>
    public static string Head(this Leaf leaf, string text, double width, Lettering lettering)
    {
        if (leaf.Width(text, lettering) <= width)
        {
            return text;
        }

        int length = text.Length;
        while (length > 1 && leaf.Width(text[..length] + More, lettering) > width)
        {
            length--;
        }

        return text[..length].TrimEnd() + More;
    }

    private static IEnumerable<string> Words(string text)
    {
        string word = string.Empty;
        foreach (string next in text.Split(' '))
        {
            bool isSign = word.Length > 0 && (next is "·" or "±" || word.EndsWith(" ±", StringComparison.Ordinal) || (char.IsDigit(word[^1]) && next.StartsWith('%')));
            if (!isSign && word.Length > 0)
            {
                yield return word;
            }

            word = isSign ? $"{word} {next}" : next;
        }

        yield return word;
    }

    private static IEnumerable<string> Pieces(Leaf leaf, string word, double width, Lettering lettering)
    {
        while (leaf.Width(word, lettering) > width && word.Length > 1)
        {
            int length = word.Length;
            while (length > 1 && leaf.Width(word[..length], lettering) > width)
            {
                length--;
            }

            // Half of a pair is no character.
            length -= length > 1 && char.IsHighSurrogate(word[length - 1]) ? 1 : 0;
            yield return word[..length];
            word = word[length..];
        }

        yield return word;
    }
}
