using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Speaking;

/// <summary>What is to be told, one statement a line, in groups.</summary>
internal sealed class Statements
{
    private readonly List<string> _lines = [];

    /// <summary>Statements made elsewhere; an empty one is a pause.</summary>
    public static Statements Of(IEnumerable<string> lines)
    {
        var statements = new Statements();
        statements._lines.AddRange(lines);
        return statements;
    }

    public void Add(string statement) => _lines.Add(statement);

    /// <summary>An empty line: where a listener may skip on.</summary>
    public void Pause() => _lines.Add(string.Empty);

    /// <summary>For a screen reader: a line a statement however long, signs written out as words.</summary>
    public Page Spoken()
    {
        var page = new Page(int.MaxValue);
        foreach (string line in _lines)
        {
            page.Add(new Line().Add(Speech.Of(line)));
        }

        return page;
    }

    /// <summary>For a screen too narrow to draw on.</summary>
    public Page Wrapped(int width)
    {
        const int Hang = 2;
        var page = new Page(width);
        foreach (string line in _lines)
        {
            string head = WordWrap.Lines(line, width).First();
            page.Add(new Line().Add(head));
            if (head.Length < line.Length)
            {
                page.Paragraph(line[head.Length..].TrimStart(), Hang);
            }
        }

        return page;
    }
}
