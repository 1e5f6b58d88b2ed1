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

            // What is laid to both ends of a difference is said once.
            foreach (RigReason reason in verdict.Figures.SelectMany(f => f.Reasons).DistinctBy(English.Rig.Of))
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
            line.To(EndOf(seat, seats) - 1).Add(Figures.Degrees(seat, 0), Ink.Quiet);
        }

        return line.To(EndOf(seats, seats) + UncertaintyWidth - 1).Add("±", Ink.Quiet);
    }

    /// <summary>A line for a measure of the seat or, in sweep, of the only gate; two for a sculling boat's sides.</summary>
    private static void Rows(Page page, RigVerdict verdict, RigMeasure measure)
    {
        string name = English.Rig.Measure(measure);
        int seats = verdict.Targets.Class.Seats;
        List<JudgedFigure> all = [.. verdict.Figures.Where(f => f.Figure.Measure == measure)];
        if (!measure.HasSide() || verdict.Targets.Class.Rowing == Rowing.Sweep)
        {
            Row(page, all.Exists(f => f.Figure.IsComputed) ? $"({name})" : name, all, seats);
            return;
        }

        foreach (Side side in (ReadOnlySpan<Side>)[Side.Port, Side.Starboard])
        {
            string label = $"{name} {side.Word()}";
            Row(page, label.Length < LabelWidth(seats) - 1 ? label : $"  {side.Word()}", all.FindAll(f => f.Figure.Place.Side == side), seats);
        }
    }

    private static void Row(Page page, string label, List<JudgedFigure> figures, int seats)
    {
        if (figures.Count == 0)
        {
            return;
        }

        Line line = new Line().Add($" {label}");
        foreach (JudgedFigure judged in figures)
        {
            bool isGood = judged.Verdict == Verdict.Good;
            string value = Figures.Degrees(judged.Figure.Value.Value);
            line.To(EndOf(judged.Figure.Place.Seat, seats) - value.Length).Add(value, isGood ? Ink.Plain : judged.Verdict.Ink());
            if (!isGood)
            {
                line.Add(judged.Verdict.Mark().ToString(), judged.Verdict.Ink());
            }
        }

        string uncertainty = Figures.Degrees(figures.Max(f => f.Figure.Value.U));
        page.Add(line.To(EndOf(seats, seats) + UncertaintyWidth - uncertainty.Length).Add(uncertainty, Ink.Quiet));
    }

    /// <summary>Where there is room, a side has its measure's name before it.</summary>
    private static int LabelWidth(int seats) => seats <= 4 ? 22 : 17;

    private static int EndOf(int seat, int seats) => LabelWidth(seats) + (seat * SeatWidth) - 1;
}
