using System.Globalization;
using System.Text;

namespace Gatewright.Drawings.Plan;

/// <summary>The hull with its seats as SVG, without what reaches out from it.</summary>
internal static class HullDrawing
{
    /// <summary>The drawing.</summary>
    /// <param name="plan">Where everything stands.</param>
    /// <param name="isSmall">As a thumbnail.</param>
    public static string Of(PlanGeometry plan, bool isSmall)
    {
        var drawn = new StringBuilder();
        drawn.Append(CultureInfo.InvariantCulture, $"<path class=\"gw-hull\" d=\"{plan.Outline}\"/>");
        if (!isSmall)
        {
            AddInside(drawn, plan);
        }

        if (plan.CoxMiddle is { } cox)
        {
            AddCox(drawn, cox, isSmall);
        }

        return drawn.ToString();
    }

    private static void AddInside(StringBuilder drawn, PlanGeometry plan)
    {
        drawn.Append(CultureInfo.InvariantCulture, $"<path class=\"gw-fine\" d=\"{plan.Cockpit}\"/>");
        drawn.Append(CultureInfo.InvariantCulture, $"<circle class=\"gw-ink\" cx=\"{Svg.N(plan.Keel)}\" cy=\"{Svg.N(plan.Hull.Bow.Y)}\" r=\"2.5\"/>");
        for (int seat = 1; seat <= plan.Class.Seats; seat++)
        {
            Spot at = plan.Seat(seat);
            Spot feet = plan.Stretcher(seat);
            drawn.Append(CultureInfo.InvariantCulture, $"<path class=\"gw-fine\" d=\"M{Svg.N(feet.X - 5)} {Svg.N(feet.Y)}h10\"/>");
            drawn.Append(CultureInfo.InvariantCulture, $"<rect class=\"gw-seat\" x=\"{Svg.N(at.X - 7)}\" y=\"{Svg.N(at.Y - 8)}\" width=\"14\" height=\"16\" rx=\"5\"/>");
            drawn.Append(CultureInfo.InvariantCulture, $"<text class=\"gw-seat-number\" x=\"{Svg.N(at.X)}\" y=\"{Svg.N(at.Y + 4.3)}\" text-anchor=\"middle\">{Svg.N(seat)}</text>");
        }
    }

    private static void AddCox(StringBuilder drawn, Spot cox, bool isSmall)
    {
        if (!isSmall)
        {
            drawn.Append(CultureInfo.InvariantCulture, $"<path class=\"gw-line\" d=\"M{Svg.N(cox.X - 6)} {Svg.N(cox.Y - 2)}a6 7 0 0 0 12 0\"/>");
        }

        (double y, string radius) = isSmall ? (cox.Y, "1.3") : (cox.Y - 2, "2.6");
        drawn.Append(CultureInfo.InvariantCulture, $"<circle class=\"gw-ink\" cx=\"{Svg.N(cox.X)}\" cy=\"{Svg.N(y)}\" r=\"{radius}\"/>");
    }
}
