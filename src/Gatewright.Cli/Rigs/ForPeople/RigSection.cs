using Gatewright.Cli.CheckShed.ForPeople;
using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Rigs.ForPeople;

/// <summary>The rig of a boat as a table: a line a measure and side, a column a seat from the bow.</summary>
/// <remarks>
/// <code>
///                            1     2     ±
///  span                  159.5 159.0   0.2
///  height port            16.0  12.0◆  0.4
///  height starboard       17.0  17.5   0.4
/// </code>
/// </remarks>
internal static class RigSection
{
    private const int Indent = 10;

    /// <summary>The columns a table of eight seats cannot do with less of.</summary>
    public static int LeastWidth(bool inInches) => inInches ? 80 : BoatPlan.LeastWidth;

    public static void Write(Page page, ShedRig rig, bool inInches = false)
    {
        page.Add(Name(rig, page.Width));
        if (rig.Verdict is not { } verdict)
        {
            page.Paragraph("Nothing of it was measured yet.");
        }
        else
        {
            var columns = new RigColumns(rig.Targets.Class.Seats, inInches);
            page.Add(Heads(columns));
            foreach (RigMeasure measure in RigMeasures.All)
            {
                Rows(page, verdict, measure, columns);
            }

            string brackets = verdict.Figures.Any(f => f.Figure.IsComputed) ? "In brackets what follows from other measures. " : string.Empty;
            string unit = inInches ? "Inches" : "Centimetres";
            page.Paragraph($"{brackets}{unit}, angles in degrees; ± is one standard uncertainty.", 1, ink: Ink.Quiet);
            // What is laid to both ends of a difference is said once.
            foreach (RigReason reason in verdict.Figures.SelectMany(f => f.Reasons).DistinctBy(r => English.Rig.Of(r)))
            {
                page.Paragraph(English.Rig.Of(reason, inInches), Indent, new Line().Add(" ").Add(reason.Verdict.Sign(), reason.Verdict.Ink()));
            }
        }

        page.Paragraph(RigTargetWords.Of(rig, inInches), 1, ink: Ink.Quiet);
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

    private static Line Heads(RigColumns columns)
    {
        Line line = new();
        for (int seat = 1; seat <= columns.Seats; seat++)
        {
            line.To(columns.EndOf(seat) - 1).Add(Figures.Degrees(seat, 0), Ink.Quiet);
        }

        return line.To(columns.End - 1).Add("±", Ink.Quiet);
    }

    /// <summary>A line for a measure of the seat or, in sweep, of the only gate; two for a sculling boat's sides.</summary>
    private static void Rows(Page page, RigVerdict verdict, RigMeasure measure, RigColumns columns)
    {
        string name = English.Rig.Measure(measure);
        List<JudgedFigure> all = [.. verdict.Figures.Where(f => f.Figure.Measure == measure)];
        if (!measure.HasSide() || verdict.Targets.Class.Rowing == Rowing.Sweep)
        {
            Row(page, all.Exists(f => f.Figure.IsComputed) ? $"({name})" : name, all, columns);
            return;
        }

        foreach (Side side in (ReadOnlySpan<Side>)[Side.Port, Side.Starboard])
        {
            string label = $"{name} {side.Word()}";
            Row(page, label.Length < columns.LabelWidth - 1 ? label : $"  {side.Word()}", all.FindAll(f => f.Figure.Place.Side == side), columns);
        }
    }

    private static void Row(Page page, string label, List<JudgedFigure> figures, RigColumns columns)
    {
        if (figures.Count == 0)
        {
            return;
        }

        RigUnit unit = columns.UnitOf(figures[0].Figure.Measure);
        Line line = new Line().Add($" {label}");
        foreach (JudgedFigure judged in figures)
        {
            bool isGood = judged.Verdict == Verdict.Good;
            string value = English.Rig.Bare(judged.Figure.Value.Value, unit);
            line.To(columns.EndOf(judged.Figure.Place.Seat) - value.Length).Add(value, isGood ? Ink.Plain : judged.Verdict.Ink());
            if (!isGood)
            {
                line.Add(judged.Verdict.Mark().ToString(), judged.Verdict.Ink());
            }
        }

        string uncertainty = English.Rig.Bare(figures.Max(f => f.Figure.Value.U), unit);
        page.Add(line.To(columns.End - uncertainty.Length).Add(uncertainty, Ink.Quiet));
    }
}
