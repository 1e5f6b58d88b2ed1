using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>The one mark of everything printed: a plumb line down the page, its bob at the foot.</summary>
internal static class PlumbLine
{
    /// <summary>Draws it from a height to another.</summary>
    public static void Draw(Leaf leaf, double x, double top, double bottom)
    {
        const double Bob = 6;
        leaf.Line(x - 1.6, top, x + 1.6, top, 0.5);
        leaf.Line(x, top, x, bottom - Bob, Leaf.Stroke);
        leaf.Shape(
            [(x, bottom - Bob - 0.6), (x + 1.5, bottom - Bob + 1.2), (x, bottom), (x - 1.5, bottom - Bob + 1.2)], isFilled: true);
    }
}
