using Gatewright.Core.Judging;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Drawing;

/// <summary>A boat's name and class in a rule across the page, with its verdict at the end: "━━ Heron  8+ ━━━━━ ◆ adjust".</summary>
internal static class BoatHeading
{
    public static Line Of(BoatVerdict boat, int width)
    {
        string sign = boat.Gates.Count == 0 ? English.Boats.NoGate : boat.Verdict.Sign();
        int room = width - sign.Length - boat.Class.Name.Length - 8;
        return new Line()
            .Add("━━ ", Ink.Quiet)
            .Add(CellText.Fit(boat.Boat, room), Ink.Strong)
            .Add($"  {boat.Class.Name} ")
            .RuleTo(width - sign.Length - 1, '━')
            .Add(" ")
            .Add(sign, boat.Verdict.Ink());
    }
}
