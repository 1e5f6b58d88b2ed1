using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>A line of boxes to tick and places to write, from left to right.</summary>
internal sealed class PencilLine(Leaf leaf, double baseline, double left = Frame.Left)
{
    /// <summary>Where the next begins.</summary>
    public double X { get; private set; } = left;

    /// <summary>Words.</summary>
    public void Say(string text)
    {
        leaf.Text(text, X, baseline, Lettering.Note);
        X += leaf.Width(text, Lettering.Note) + 3;
    }

    /// <summary>A box to tick, and what it stands for.</summary>
    public void Tick(string text, bool isTicked = false)
    {
        TickBox.Draw(leaf, X, baseline, isTicked);
        X += TickBox.Side + 1.5;
        leaf.Text(text, X, baseline, Lettering.Note);
        X += leaf.Width(text, Lettering.Note) + 4;
    }

    /// <summary>What is to be written, and a line to write it on.</summary>
    public void Write(string text, double width)
    {
        leaf.Text(text, X, baseline, Lettering.Note);
        X += leaf.Width(text, Lettering.Note) + 1.5;
        Rule(width);
        X += 4;
    }

    /// <summary>A line to write on.</summary>
    public void Rule(double width)
    {
        TickBox.Rule(leaf, X, baseline, width);
        X += width;
    }
}
