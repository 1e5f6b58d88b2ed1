namespace Gatewright.Cli.Drawing;

/// <summary>One line of output, built from left to right.</summary>
internal sealed class Line
{
    private readonly List<Run> _runs = [];

    public IReadOnlyList<Run> Runs => _runs;

    /// <summary>Columns it takes on a terminal.</summary>
    public int Width { get; private set; }

    /// <summary>Text behind what there is, tame: whatever came from a file passes here on its way to the screen.</summary>
    public Line Add(string text, Ink ink = Ink.Plain)
    {
        if (text.Length > 0)
        {
            string tame = CellText.Tame(text);
            _runs.Add(new(tame, ink));
            Width += CellText.Width(tame);
        }

        return this;
    }

    /// <summary>Blanks up to a column; at least one when the line is already that long.</summary>
    public Line To(int column) => Add(new string(' ', Math.Max(1, column - Width)));

    /// <summary>The same character up to a column; none when the line is already that long.</summary>
    public Line RuleTo(int column, char rule) => Add(new string(rule, Math.Max(0, column - Width)), Ink.Quiet);

    /// <inheritdoc/>
    public override string ToString() => string.Concat(_runs.Select(run => run.Text)).TrimEnd();
}
