using System.Globalization;
using System.Text;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Drawings.Marks;

namespace Gatewright.Drawings.Plan;

/// <summary>A rigger reaching to its gate, and what is known there, as SVG.</summary>
/// <remarks>
/// As text, not as components: a list of boats has hundreds, a slow phone needs some tenths of a millisecond for each component, and
/// while a boat is read, two riggers look otherwise after each tap.
/// </remarks>
/// <param name="Plan">Where everything stands.</param>
/// <param name="Gate">The gate.</param>
/// <param name="IsSmall">As a thumbnail.</param>
/// <param name="IsTouchable">Whether it can be touched.</param>
/// <param name="IsLit">Whether it is read now.</param>
/// <param name="OarAt">Where in the stroke it is read now; null for no oar.</param>
internal sealed record RiggerDrawing(PlanGeometry Plan, PlanGate Gate, bool IsSmall, bool IsTouchable, bool IsLit, OarAngle? OarAt)
{
    /// <summary>The drawing.</summary>
    public string Svg()
    {
        var drawn = new StringBuilder();
        drawn.Append("<path class=\"gw-arm\" d=\"");
        foreach ((Spot foot, Spot pin) in IsSmall ? Plan.Arms(Gate.Place).Skip(1) : Plan.Arms(Gate.Place))
        {
            drawn.Append(CultureInfo.InvariantCulture, $"M{N(foot.X)} {N(foot.Y)}L{N(pin.X)} {N(pin.Y)}");
        }

        drawn.Append("\"/>");
        if (IsSmall)
        {
            AddSmallMark(drawn);
        }
        else
        {
            AddGate(drawn);
        }

        return drawn.ToString();
    }

    /// <summary>What is wrong is larger than what is right, so that it is seen first; what was not read is a bare rigger.</summary>
    private void AddSmallMark(StringBuilder drawn)
    {
        if (Gate.Verdict is { } verdict)
        {
            drawn.Append(MarkDrawing.Of(verdict, held: false, Plan.Pin(Gate.Place), verdict == Verdict.Good ? 7 : Plan.MarkSize));
        }
    }

    private void AddGate(StringBuilder drawn)
    {
        if (OarAt is { } at)
        {
            (Spot inboard, Spot outboard) = Plan.Shaft(Gate.Place, at);
            drawn.Append(CultureInfo.InvariantCulture, $"<line class=\"gw-shaft\" x1=\"{N(inboard.X)}\" y1=\"{N(inboard.Y)}\" x2=\"{N(outboard.X)}\" y2=\"{N(outboard.Y)}\"/>");
        }

        Spot pin = Plan.Pin(Gate.Place);
        drawn.Append(CultureInfo.InvariantCulture, $"<circle class=\"gw-pin{(IsTouchable ? " gw-can-touch" : "")}{(Gate.IsRead || IsLit ? " gw-is-read" : "")}\" cx=\"{N(pin.X)}\" cy=\"{N(pin.Y)}\" r=\"4.5\"/>");
        drawn.Append(MarkDrawing.Of(Gate.Verdict, held: false, Plan.Mark(Gate.Place), Plan.MarkSize));
        Spot figures = Plan.Figures(Gate.Place);
        string anchor = Gate.Place.Side == Side.Port ? "end" : "start";
        AddText(drawn, "gw-value", figures.Plus(0, Gate.Detail is null ? 7.5 : 2), anchor, Gate.Value);
        AddText(drawn, "gw-detail", figures.Plus(0, 18), anchor, Gate.Detail);
    }

    private static void AddText(StringBuilder drawn, string name, Spot at, string anchor, string? text)
    {
        if (!string.IsNullOrEmpty(text))
        {
            drawn.Append(CultureInfo.InvariantCulture, $"<text class=\"{name}\" x=\"{N(at.X)}\" y=\"{N(at.Y)}\" text-anchor=\"{anchor}\">{Drawings.Svg.Words(text)}</text>");
        }
    }

    private static string N(double value) => Drawings.Svg.N(value);
}
