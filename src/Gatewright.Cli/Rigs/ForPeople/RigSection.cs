using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Rigs.ForPeople;

/// <summary>The rig of a boat as a table: a line a measure and side, a column a seat from the bow.</summary>
/// <remarks>
/// <code>
///                       1     2      ±
///  span             159.5 159.0    0.2
///  height port       16.0  12.0◆   0.4
///  starboard         17.0  17.5    0.4
/// </code>
/// </remarks>
internal static class RigSection
{
    private const int LabelWidth = 17;
    private const int SeatWidth = 6;
    private const int UncertaintyWidth = 6;
    private const int Indent = 10;

    public static void Write(Page page, ShedRig rig)
    {
        page.Add(Name(rig, page.Width));
        if (rig.Verdict is not { } verdict)
        {
            page.Paragraph("Nothing of it was measured yet.");
        }
        else
        {
            page.Add(Heads(rig.Targets.Class.Seats));
            foreach (RigMeasure measure in RigMeasures.All)
            {
                Rows(page, verdict, measure);
            }

            if (verdict.Figures.Any(f => f.Figure.IsComputed))
            {
                page.Paragraph("In brackets what follows from other measures. Centimetres, angles in degrees; ± is one standard uncertainty.", 1, ink: Ink.Quiet);
            }
            else
            {
                page.Paragraph("Centimetres, angles in degrees; ± is one standard uncertainty.", 1, ink: Ink.Quiet);
            }

            foreach (RigReason reason in verdict.Figures.SelectMany(f => f.Reasons))
            {
                page.Paragraph(English.Rig.Of(reason), Indent, new Line().Add(" ").Add(reason.Verdict.Sign(), reason.Verdict.Ink()));
            }
        }

        page.Paragraph(RigTargetWords.Of(rig), 1, ink: Ink.Quiet);
        page.Blank();
    }

    private static Line Name(ShedRig rig, int width)
    {
        string sign = rig.Verdict?.Verdict.Sign() ?? "not measured";
        string head = "The rig of ";
        int room = width - sign.Length - rig.Targets.Class.Name.Length - head.Length - 8;
        return new Line()
            .Add("━━ ", Ink.Quiet)
            .Add(head)
            .Add(CellText.Fit(rig.Boat, room), Ink.Strong)
            .Add($"  {rig.Targets.Class.Name} ")
            .RuleTo(width - sign.Length - 1, '━')
            .Add(" ")
            .Add(sign, rig.Verdict?.Verdict.Ink() ?? Ink.Quiet);
    }

    private static Line Heads(int seats)
    {
        Line line = new();
        for (int seat = 1; seat <= seats; seat++)
        {
            line.To(EndOf(seat) - 1).Add(Figures.Degrees(seat, 0), Ink.Quiet);
        }

        return line.To(EndOf(seats) + UncertaintyWidth - 1).Add("±", Ink.Quiet);
    }

    /// <summary>A line for a measure of the seat or, in sweep, of the only gate; two for a sculling boat's sides.</summary>
    private static void Rows(Page page, RigVerdict verdict, RigMeasure measure)
    {
        string name = English.Rig.Measure(measure);
        if (measure.HasSide() && verdict.Targets.Class.Rowing == Rowing.Scull)
        {
            bool isFirst = true;
            foreach (Side side in (ReadOnlySpan<Side>)[Side.Port, Side.Starboard])
            {
                List<JudgedFigure> figures = [.. verdict.Figures.Where(f => f.Figure.Measure == measure && f.Figure.Place.Side == side)];
                if (figures.Count > 0)
                {
                    Row(page, isFirst ? $"{name} {side.Word()}" : side.Word(), figures, verdict.Targets.Class.Seats);
                    isFirst = !CellFits($"{name} {Side.Starboard.Word()}") && !isFirst;
                }
            }

            return;
        }

        List<JudgedFigure> all = [.. verdict.Figures.Where(f => f.Figure.Measure == measure)];
        if (all.Count > 0)
        {
            Row(page, name, all, verdict.Targets.Class.Seats);
        }
    }

    private static bool CellFits(string label) => label.Length < LabelWidth;

    private static void Row(Page page, string label, List<JudgedFigure> figures, int seats)
    {
        Line line = new Line().Add($" {label}");
        foreach (JudgedFigure judged in figures)
        {
            string value = Figures.Degrees(judged.Figure.Value.Value);
            string shown = judged.Figure.IsComputed ? $"({value})" : value;
            int end = EndOf(judged.Figure.Place.Seat) + (judged.Figure.IsComputed ? 1 : 0);
            line.To(end - shown.Length).Add(shown, judged.Verdict == Verdict.Good ? Ink.Plain : judged.Verdict.Ink());
            if (judged.Verdict != Verdict.Good)
            {
                line.Add(judged.Verdict.Mark().ToString(), judged.Verdict.Ink());
            }
        }

        double u = figures.Max(f => f.Figure.Value.U);
        string uncertainty = Figures.Degrees(u);
        page.Add(line.To(EndOf(seats) + UncertaintyWidth - uncertainty.Length).Add(uncertainty, Ink.Quiet));
    }

    private static int EndOf(int seat) => LabelWidth + (seat * SeatWidth) - 1;
}
