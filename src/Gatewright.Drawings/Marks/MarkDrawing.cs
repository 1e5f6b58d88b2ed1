using Gatewright.Core.Judging;

namespace Gatewright.Drawings.Marks;

/// <summary>A verdict's own shape as SVG. Never colour alone.</summary>
internal static class MarkDrawing
{
    private const string Tag =
        """<path class="gw-filled" d="M12 3.8 20.5 9.4V23H3.5V9.4Z"/><path class="gw-cord" d="M12 8C12 4.5 9.8 4 9.8 1.2"/>"""
        + """<circle class="gw-hole" cx="12" cy="8.6" r="1.7"/><path class="gw-bar" d="M7.5 14h9M7.5 18.8h9"/>""";

    /// <summary>The shape.</summary>
    /// <param name="verdict">The verdict; null is not read.</param>
    /// <param name="held">Held ashore by somebody: a tag, whatever the verdict.</param>
    /// <param name="middle">Its middle, in the drawing's units.</param>
    /// <param name="size">The square it stands in, in the drawing's units: one unit of the shape is a 24th of it.</param>
    public static string Of(Verdict? verdict, bool held, Spot middle, double size)
    {
        (string name, string shape) = held ? ("gw-held", Tag) : verdict switch
        {
            Verdict.Good => ("gw-good", """<circle class="gw-filled" cx="12" cy="12" r="8.2"/>"""),
            Verdict.Unsure => ("gw-unsure", """<circle class="gw-open" cx="12" cy="12" r="7.5"/>"""),
            Verdict.Adjust => ("gw-adjust", """<path class="gw-filled" d="M12 1.8 22.2 12 12 22.2 1.8 12Z"/>"""),
            Verdict.Stop => (
                "gw-stop",
                """<path class="gw-filled" d="M7.7 1.6h8.6l6.1 6.1v8.6l-6.1 6.1H7.7l-6.1-6.1V7.7Z"/><path class="gw-bar" d="M6.8 12h10.4"/>"""),
            _ => ("gw-not-read", """<path class="gw-open" d="M6 12h12"/>"""),
        };
        return $"""<g class="gw-mark {name}" transform="translate({Svg.N(middle.X - (size / 2))} {Svg.N(middle.Y - (size / 2))}) scale({Svg.Turn(size / 24)})">{shape}</g>""";
    }
}
