using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>Places for a pencil: a box to tick, a box or a line to write in.</summary>
internal static class TickBox
{
    /// <summary>A side of a box to tick, millimetres: a cold hand with a blunt pencil hits 5.</summary>
    public const double Side = 5;

    /// <summary>How high a box to write a figure in is, millimetres: handwritten figures are 5 to 7 high.</summary>
    public const double WritingHeight = 9;

    /// <summary>A box to tick, left of a line of text whose letters stand on <paramref name="baseline"/>.</summary>
    public static void Draw(Leaf leaf, double x, double baseline, bool isTicked = false)
    {
        double top = baseline - Side + 0.9;
        leaf.Box(x, top, Side, Side, 0.4);
        if (isTicked)
        {
            leaf.Line(x + 1, top + 2.6, x + 2.1, top + 4, 0.6);
            leaf.Line(x + 2.1, top + 4, x + 4.2, top + 1, 0.6);
        }
    }

    /// <summary>A line to write on, with what belongs there under or before it said elsewhere.</summary>
    public static void Rule(Leaf leaf, double x, double baseline, double width) =>
        leaf.Line(x, baseline + 0.8, x + width, baseline + 0.8, 0.3);
}
