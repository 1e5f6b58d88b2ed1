using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.Drawing;

/// <summary>
/// Degrees laid out along a line of the screen, from plumb: the plumb line stands upright through every row, and a
/// face is as far from it as it leans.
/// </summary>
internal sealed class PlumbScale
{
    public const char PlumbLine = '│';
    public const char FloorMark = '┊';
    public const char ReadMark = '╋';
    public const char ReadReach = '━';
    public const char ExpectedMark = '┼';
    public const char ExpectedReach = '╌';
    public const char LowestMark = '[';
    public const char HighestMark = ']';

    private readonly double _lowest;
    private readonly double _highest;
    private readonly int _left;
    private readonly int _right;

    /// <summary>A scale between two columns that holds plumb and everything given, to whole degrees.</summary>
    public PlumbScale(IReadOnlyCollection<double> degrees, int left, int right)
    {
        _lowest = Math.Floor(Math.Min(0, degrees.Min()));
        _highest = Math.Max(_lowest + 1, Math.Ceiling(Math.Max(0, degrees.Max())));
        (_left, _right) = (left, right);
    }

    /// <summary>The column of so many degrees.</summary>
    public int Column(double degrees) =>
        _left + (int)Math.Round((degrees - _lowest) / (_highest - _lowest) * (_right - _left), MidpointRounding.AwayFromZero);

    /// <summary>The degrees that each column stands for.</summary>
    public double DegreesAColumn => (_highest - _lowest) / (_right - _left);

    /// <summary>The figures along the scale, "plumb" where they are 0.</summary>
    public void DrawFigures(Canvas canvas, int y)
    {
        const int WidestFigure = 4;
        int step = (int)Math.Ceiling(WidestFigure * DegreesAColumn);
        const string Plumb = "plumb";
        int plumb = Column(0) - (Plumb.Length / 2);
        for (int degrees = (int)_lowest; degrees <= _highest; degrees++)
        {
            string figure = Figures.Degrees(degrees, 0) + "°";
            int x = Column(degrees) - (figure.Length / 2);
            bool clear = x > plumb + Plumb.Length || x + figure.Length < plumb;
            if (degrees % step == 0 && clear)
            {
                canvas.Put(x, y, figure, Ink.Quiet);
            }
        }

        canvas.Put(plumb, y, Plumb, Ink.Strong);
    }

    /// <summary>The plumb line, the floor and the limits in one row.</summary>
    public void DrawLimits(Canvas canvas, int y, StationLimits limits)
    {
        DrawPlumb(canvas, y);
        if (Column(limits.Floor.Degrees) != Column(0))
        {
            canvas.Put(Column(limits.Floor.Degrees), y, FloorMark.ToString(), Ink.Quiet);
        }

        canvas.Put(Column(limits.Lowest.Degrees), y, LowestMark.ToString());
        canvas.Put(Column(limits.Highest.Degrees), y, HighestMark.ToString());
    }

    public void DrawPlumb(Canvas canvas, int y) => canvas.Put(Column(0), y, PlumbLine.ToString(), Ink.Strong);

    /// <summary>How far a value reaches, one u to either side. Drawn before limits and mark, which stand on it.</summary>
    public void DrawReach(Canvas canvas, int y, Estimate value, bool read, Ink ink)
    {
        (double middle, double u) = (value.Value.Degrees, value.U.Degrees);
        canvas.Row(Column(middle - u), Column(middle + u), y, read ? ReadReach : ExpectedReach, ink);
    }

    /// <summary>Where a value stands.</summary>
    public void DrawMark(Canvas canvas, int y, double degrees, bool read, Ink ink) =>
        canvas.Put(Column(degrees), y, (read ? ReadMark : ExpectedMark).ToString(), ink);
}
