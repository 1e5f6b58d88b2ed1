using Gatewright.Core.Judging;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>A verdict's own shape, as on screen: none is told from another by colour, so none is lost in black on white.</summary>
internal static class VerdictShape
{
    /// <summary>Draws it about a middle, in a square of a size; null is not read.</summary>
    public static void Draw(Leaf leaf, Verdict? verdict, double x, double y, double size)
    {
        double unit = size / 24;
        switch (verdict)
        {
            case Verdict.Good:
                leaf.Circle(x, y, 8.2 * unit, isFilled: true);
                break;
            case Verdict.Unsure:
                leaf.Circle(x, y, 7.5 * unit, isFilled: false, thickness: 2.6 * unit);
                break;
            case Verdict.Adjust:
                leaf.Shape([(x, y - (10.2 * unit)), (x + (10.2 * unit), y), (x, y + (10.2 * unit)), (x - (10.2 * unit), y)], isFilled: true);
                break;
            case Verdict.Stop:
                leaf.Shape(Octagon(x, y, 10.4 * unit, 4.3 * unit), isFilled: true);
                leaf.WhiteBar(x - (5.2 * unit), y - (1.3 * unit), 10.4 * unit, 2.6 * unit);
                break;
            default:
                leaf.Line(x - (6 * unit), y, x + (6 * unit), y, 2.2 * unit);
                break;
        }
    }

    /// <summary>The tag of a boat that is held ashore, whatever its verdict.</summary>
    public static void Tag(Leaf leaf, double x, double y, double size)
    {
        double unit = size / 24;
        (double X, double Y) At(double across, double down) => (x + ((across - 12) * unit), y + ((down - 12) * unit));
        leaf.Shape([At(12, 3.8), At(20.5, 9.4), At(20.5, 23), At(3.5, 23), At(3.5, 9.4)], isFilled: true);
        (double holeX, double holeY) = At(12, 8.6);
        leaf.Circle(holeX, holeY, 1.7 * unit, isFilled: false, thickness: 0.1);
        (double cordX, double cordY) = At(10, 1);
        leaf.Line(holeX, holeY - (1.7 * unit), cordX, cordY, 1.2 * unit);
        foreach (double down in (ReadOnlySpan<double>)[14, 18.8])
        {
            (double barX, double barY) = At(7.5, down - 1);
            leaf.WhiteBar(barX, barY, 9 * unit, 2 * unit);
        }
    }

    private static IEnumerable<(double X, double Y)> Octagon(double x, double y, double half, double shoulder) =>
    [
        (x - shoulder, y - half), (x + shoulder, y - half), (x + half, y - shoulder), (x + half, y + shoulder),
        (x + shoulder, y + half), (x - shoulder, y + half), (x - half, y + shoulder), (x - half, y - shoulder),
    ];
}
