namespace Gatewright.Cli.Drawing;

/// <summary>A grid of cells to draw on, each one character wide; what falls outside is not drawn.</summary>
internal sealed class Canvas(int width, int height)
{
    private readonly char[] _marks = Blank(width * height);
    private readonly Ink[] _inks = new Ink[width * height];

    public int Width => width;

    public int Height => height;

    public void Put(int x, int y, string text, Ink ink = Ink.Plain)
    {
        foreach (char mark in text)
        {
            if (x >= 0 && x < width && y >= 0 && y < height)
            {
                _marks[(y * width) + x] = mark;
                _inks[(y * width) + x] = ink;
            }

            x++;
        }
    }

    /// <summary>Text that ends before a column.</summary>
    public void PutBefore(int x, int y, string text, Ink ink = Ink.Plain) => Put(x - text.Length, y, text, ink);

    /// <summary>The same mark in a row, from a column to another, both included.</summary>
    public void Row(int from, int to, int y, char mark, Ink ink = Ink.Quiet)
    {
        for (int x = from; x <= to; x++)
        {
            Put(x, y, mark.ToString(), ink);
        }
    }

    /// <summary>The drawing, from the top; blanks at the ends of lines are left out.</summary>
    public IEnumerable<Line> Lines()
    {
        for (int y = 0; y < height; y++)
        {
            yield return LineAt(y);
        }
    }

    private Line LineAt(int y)
    {
        int start = y * width;
        int end = start + _marks.AsSpan(start, width).TrimEnd(' ').Length;
        var line = new Line();
        for (int from = start; from < end;)
        {
            int to = from;
            while (to < end && _inks[to] == _inks[from])
            {
                to++;
            }

            line.Add(new string(_marks, from, to - from), _inks[from]);
            from = to;
        }

        return line;
    }

    private static char[] Blank(int cells)
    {
        char[] marks = new char[cells];
        Array.Fill(marks, ' ');
        return marks;
    }
}
