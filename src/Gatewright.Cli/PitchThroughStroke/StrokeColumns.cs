using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>The figures told at each point of the stroke; the blade's only where its sleeve makes it another.</summary>
internal static class StrokeColumns
{
    public static List<(string Head, Func<OarAngle, Pitch> Value)> Of(StrokePitch pitch)
    {
        var columns = new List<(string, Func<OarAngle, Pitch>)> { ("pitch", pitch.OnLevelHull) };
        if (pitch.Sleeve.Degrees != 0)
        {
            columns.Add(("blade", pitch.OfBlade));
        }

        Lie over = pitch.Lie == Lie.Upright ? Lie.Inverted : Lie.Upright;
        foreach (Lie lie in (ReadOnlySpan<Lie>)[pitch.Lie, over])
        {
            columns.Add((lie.Word(), at => pitch.Shown(at, lie)));
        }

        return columns;
    }
}
