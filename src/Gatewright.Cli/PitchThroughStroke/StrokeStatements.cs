using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>The stroke in words alone.</summary>
internal static class StrokeStatements
{
    public static Statements Of(StrokePitch pitch, Standard standard)
    {
        var statements = new Statements();
        statements.Add(StrokeWords.Gate(pitch));
        statements.Add(StrokeWords.Lying(pitch));
        foreach (StrokePoint point in pitch.Points())
        {
            IEnumerable<string> figures = StrokeColumns.Of(pitch)
                .Select(column => $"{column.Head} {StrokeWords.Two(column.Value(point.Angle).Degrees)}");
            string station = point.Station is { } s ? $", {s.Word()}" : string.Empty;
            statements.Add($"Oar at {Figures.Short(point.Angle.Angle)}°{station}: {string.Join(", ", figures)}.{Limits(point, standard)}");
        }

        statements.Add(StrokeWords.LeanOut(pitch));
        statements.Add(StrokeWords.Source);
        return statements;
    }

    private static string Limits(StrokePoint point, Standard standard) => point.Station is { } station
        ? $" The standard {standard.Name} allows {Figures.Short(standard.At(station).Lowest.Angle)} to "
            + $"{Figures.Short(standard.At(station).Highest.Angle)}, its floor is {Figures.Short(standard.At(station).Floor.Angle)}."
        : string.Empty;
}
