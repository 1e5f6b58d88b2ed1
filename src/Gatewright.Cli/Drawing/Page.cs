namespace Gatewright.Cli.Drawing;

/// <summary>Lines of output for a width.</summary>
internal sealed class Page(int width)
{
    private readonly List<Line> _lines = [];

    /// <summary>Columns that no line of text exceeds.</summary>
    public int Width { get; } = width;

    public IReadOnlyList<Line> Lines => _lines;

    public void Add(Line line) => _lines.Add(line);

    public void Add(IEnumerable<Line> lines) => _lines.AddRange(lines);

    public void Blank() => _lines.Add(new());

    /// <summary>Text wrapped at the width, every line indented; the first may begin with something of its own.</summary>
    public void Paragraph(string text, int indent = 0, Line? first = null, Ink ink = Ink.Plain)
    {
        Line line = first ?? new Line();
        foreach (string wrapped in WordWrap.Lines(CellText.Tame(text), Width - indent))
        {
            if (line.Width < indent)
            {
                line.To(indent);
            }

            _lines.Add(line.Add(wrapped, ink));
            line = new();
        }
    }
}
