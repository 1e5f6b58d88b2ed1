using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>The stroke from catch, at the top, to finish: figures on the left, and on the right the face's lean from the plumb line.</summary>
internal static class StrokePage
{
    /// <summary>The columns the drawing cannot do with less of.</summary>
    public const int LeastWidth = 72;

    private const int ColumnWidth = 9;
    private const int AngleEnd = 13;
    private const int HeadRows = 2;
    private const char BandMark = '·';

    public static Page Of(StrokePitch pitch, Standard standard, int width)
    {
        var page = new Page(width);
        page.Paragraph(StrokeWords.Gate(pitch), ink: Ink.Strong);
        page.Paragraph(StrokeWords.Lying(pitch));
        page.Blank();
        page.Add(Draw(pitch, standard, width));
        page.Blank();
        page.Paragraph(
            $"{PlumbScale.PlumbLine} plumb, {PlumbScale.ReadMark} pitch on a level boat, {PlumbScale.LowestMark} "
            + $"{PlumbScale.HighestMark} limits and {PlumbScale.FloorMark} floor of the standard {standard.Name}. "
            + StrokeWords.Band);
        page.Paragraph(StrokeWords.LeanOut(pitch));
        page.Paragraph(StrokeWords.Source, ink: Ink.Quiet);
        return page;
    }

    private static IEnumerable<Line> Draw(StrokePitch pitch, Standard standard, int width)
    {
        List<StrokePoint> points = [.. pitch.Points()];
        List<(string Head, Func<OarAngle, Pitch> Value)> columns = StrokeColumns.Of(pitch);
        int left = AngleEnd + (columns.Count * ColumnWidth) + 4;
        var canvas = new Canvas(width, points.Count + HeadRows);
        var scale = new PlumbScale(Reached(pitch, points, standard), left, width - 2);
        scale.DrawFigures(canvas, 1);
        canvas.PutBefore(AngleEnd, 1, "oar", Ink.Quiet);
        canvas.PutBefore(AngleEnd + (columns.Count * ColumnWidth), 0, "a gauge shows", Ink.Quiet);
        for (int column = 0; column < columns.Count; column++)
        {
            canvas.PutBefore(AngleEnd + ((column + 1) * ColumnWidth), 1, columns[column].Head, Ink.Quiet);
        }

        for (int row = 0; row < points.Count; row++)
        {
            DrawRow(canvas, row + HeadRows, points[row]);
        }

        return canvas.Lines();

        void DrawRow(Canvas on, int y, StrokePoint at)
        {
            on.Put(1, y, at.Station?.Word() ?? string.Empty, Ink.Strong);
            on.PutBefore(AngleEnd, y, Figures.Short(at.Angle.Angle) + "°");
            for (int column = 0; column < columns.Count; column++)
            {
                on.PutBefore(AngleEnd + ((column + 1) * ColumnWidth), y, StrokeWords.Two(columns[column].Value(at.Angle).Degrees));
            }

            DrawBand(on, y, at);
            Ink ink = at.Station is null ? Ink.Plain : Ink.Strong;
            scale.DrawMark(on, y, pitch.OnLevelHull(at.Angle).Degrees, read: true, ink);
        }

        void DrawBand(Canvas on, int y, StrokePoint at)
        {
            if (at.Station is { } station)
            {
                scale.DrawLimits(on, y, standard.At(station));
                return;
            }

            (double lowest, double highest) = Between(at.Angle, pitch.Stations, standard);
            scale.DrawPlumb(on, y);
            on.Put(scale.Column(lowest), y, BandMark.ToString(), Ink.Quiet);
            on.Put(scale.Column(highest), y, BandMark.ToString(), Ink.Quiet);
        }
    }

    private static (double Lowest, double Highest) Between(OarAngle at, StationAngles stations, Standard standard)
    {
        (Station from, Station to) = at.Degrees > stations.Abeam.Degrees ? (Station.Catch, Station.Abeam) : (Station.Abeam, Station.Finish);
        double share = (at.Degrees - stations.At(from).Degrees) / (stations.At(to).Degrees - stations.At(from).Degrees);
        (StationLimits first, StationLimits last) = (standard.At(from), standard.At(to));
        return (
            double.Lerp(first.Lowest.Degrees, last.Lowest.Degrees, share),
            double.Lerp(first.Highest.Degrees, last.Highest.Degrees, share));
    }

    private static List<double> Reached(StrokePitch pitch, List<StrokePoint> points, Standard standard) =>
    [
        .. points.Select(point => pitch.OnLevelHull(point.Angle).Degrees),
        .. Stations.All.SelectMany(s => (IEnumerable<double>)[standard.At(s).Floor.Degrees, standard.At(s).Highest.Degrees + 0.5]),
    ];
}
