using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>The one mark of everything printed: a plumb line down the page, its bob at the foot.</summary>
internal static class PlumbLine
{
    /// <summary>Draws it from a height to another.</summary>
    /// <param name="leaf">The page.</param>
    /// <param name="x">From the left.</param>
    /// <param name="top">Where it hangs.</param>
    /// <param name="bottom">The point of its bob.</param>
    /// <param name="size">1 on a page, less on a card.</param>
    public static void Draw(Leaf leaf, double x, double top, double bottom, double size = 1)
    {
        double shoulder = bottom - (4.8 * size);
        leaf.Line(x - (1.6 * size), top, x + (1.6 * size), top, 0.5 * size);
        leaf.Line(x, top, x, shoulder, Leaf.Stroke);
        leaf.Shape(
            [(x, shoulder - (1.8 * size)), (x + (1.5 * size), shoulder), (x, bottom), (x - (1.5 * size), shoulder)], isFilled: true);
    }
}
