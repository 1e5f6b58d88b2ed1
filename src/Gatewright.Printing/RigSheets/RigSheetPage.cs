using Gatewright.Core;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.RigSheets;

/// <summary>Lays a rig sheet out: who the boat is and how it stands, then the boat itself, then its rig and what is open.</summary>
internal sealed class RigSheetPage(Book book, RigSheet sheet)
{
    private const double LargestRow = 24;
    private const double LeastEnd = 6;

    private readonly Imprint _imprint = book.Imprint;

    private (string Heading, IReadOnlyList<string> Points)[] Lists =>
        [("Sheet.Oars", sheet.Oars), ("Sheet.Why", sheet.Reasons), ("Sheet.IsOpen", sheet.Open)];

    /// <summary>Draws it, on another page too where one does not hold it.</summary>
    public void Draw()
    {
        var flow = new Flow(book, Again);
        Head(flow);
        Held(flow);
        if (sheet.Class is { } boatClass)
        {
            MeasureTable measures = Measures(flow, boatClass);
            Plan(flow, boatClass, measures);
            measures.Draw(flow);
        }

        foreach ((string heading, IReadOnlyList<string> points) in Lists)
        {
            List(flow, heading, points);
        }

        Judged(flow);
    }

    /// <summary>What a second page is headed by.</summary>
    private void Again(Flow flow)
    {
        flow.Leaf.Fit(_imprint.Texts["Continued", sheet.Boat], Frame.Left, flow.Y + 4, Frame.Width, Lettering.Heading, Lettering.LeastAtArmsLength);
        flow.Y += 7;
    }

    private void Head(Flow flow)
    {
        BoatHead.Draw(flow, sheet.Boat, sheet.Class?.Name);
        flow.Y += 3;
        Leaf leaf = flow.Leaf;
        VerdictShape.Draw(leaf, sheet.Verdict, Frame.Left + 4.4, flow.Y + 4.2, 8.8);
        leaf.Text(sheet.Word, Frame.Left + 12, flow.Y + 6.3, Lettering.Verdict);
        if (sheet.Rack is { } rack)
        {
            leaf.Fit(rack, Frame.Right, flow.Y + 6.3, 80, Lettering.WorkBold, Lettering.LeastInTheHand, Align.Right);
        }

        flow.Y += 9;
        flow.Paragraph(sheet.Read, Lettering.Note);
    }

    private void Held(Flow flow)
    {
        foreach (string hold in sheet.Holds)
        {
            HeldBox.Draw(flow, _imprint.Texts["Held"], hold);
        }

        foreach (string caution in sheet.Cautions)
        {
            HeldBox.Draw(flow, null, caution);
        }
    }

    private void Plan(Flow flow, BoatClass boatClass, MeasureTable measures)
    {
        double ends = Ends(boatClass);
        double end = Math.Clamp(
            (flow.Left - Below(flow, measures) - ends - (boatClass.Seats * SmallestRow)) / 2, LeastEnd, boatClass.Seats == 8 ? LeastEnd : 10);
        double spare = (flow.Left - Below(flow, measures) - ends - (2 * end)) / boatClass.Seats;
        double row = Math.Clamp(spare, SmallestRow, LargestRow);
        flow.Room(ends + (2 * end) + (boatClass.Seats * row));
        var plan = new HullInPlan(boatClass, (Frame.Left + Frame.Right) / 2, flow.Y + 2, row, end);
        plan.Draw(flow.Leaf, sheet.Gates.Select(g => g.Gate));
        Leaf leaf = flow.Leaf;
        leaf.Text(_imprint.Say.Names.Side(Side.Port), plan.Keel - 10, flow.Y + 5, Lettering.NoteBold, Align.Right);
        leaf.Text(_imprint.Say.Names.Side(Side.Starboard), plan.Keel + 10, flow.Y + 5, Lettering.NoteBold);
        foreach (SheetGate gate in sheet.Gates)
        {
            plan.DrawMark(leaf, gate.Gate, gate.Verdict);
            new GateFigures(_imprint, leaf).Draw(gate, plan.Middle(gate.Gate.Seat));
        }

        flow.Y = plan.Bottom + 1;
    }

    /// <summary>How much has to stand under the plan: the rows take what is left of the page.</summary>
    private double Below(Flow flow, MeasureTable measures) => measures.Height
        + Lists.Where(l => l.Points.Count > 0).Sum(l => Flow.HeadingHeight + l.Points.Sum(p => flow.PointHeight(p, Lettering.Note)))
        + JudgedHeight(flow)
        + 1;

    /// <summary>As many measures as the page has room for: all; those taken and those that come first; else the fewer of the two.</summary>
    private MeasureTable Measures(Flow flow, BoatClass boatClass)
    {
        double plan = Ends(boatClass) + (2 * LeastEnd) + (boatClass.Seats * SmallestRow);
        bool isAnyTaken = sheet.Measures.Any(m => m.IsMeasured);
        foreach (Func<SheetMeasure, bool> choice in (Func<SheetMeasure, bool>[])[_ => true, m => m.IsMeasured || m.IsFirst])
        {
            var table = new MeasureTable(_imprint, [.. sheet.Measures.Where(choice)], boatClass);
            if (plan + Below(flow, table) <= flow.Left)
            {
                return table;
            }
        }

        return new(_imprint, [.. sheet.Measures.Where(m => isAnyTaken ? m.IsMeasured : m.IsFirst)], boatClass);
    }

    /// <summary>
    /// Three lines at a gate take 14.4 mm. Where no two neighbours have a gate on one side, as in most sweep boats, a gate has its
    /// neighbours' rows for itself too, and what is then least is the mark of a verdict beside the pin.
    /// </summary>
    private double SmallestRow
    {
        get
        {
            var gates = sheet.Gates.Select(g => g.Gate).ToHashSet();
            return gates.Any(g => gates.Contains(g with { Seat = g.Seat + 1 })) ? GateFigures.Height : Math.Max(GateFigures.Height / 2, 8.4);
        }
    }

    private static double Ends(BoatClass boatClass) => (boatClass.IsCoxed ? 6 : 0) + 4;

    private void List(Flow flow, string heading, IReadOnlyList<string> points)
    {
        if (points.Count > 0)
        {
            flow.Heading(_imprint.Texts[heading]);
            foreach (string point in points)
            {
                flow.Point(point, Lettering.Note);
            }
        }
    }

    /// <summary>By what it was judged, at the foot of the last page.</summary>
    private void Judged(Flow flow)
    {
        double height = JudgedHeight(flow);
        flow.Room(height);
        flow.Y += Math.Max(0, flow.Left - height);
        foreach (string text in sheet.Judged)
        {
            flow.Paragraph(text, Lettering.Fine, after: 0.4);
        }
    }

    private double JudgedHeight(Flow flow) => sheet.Judged.Sum(text => flow.Leaf.Height(text, Frame.Width, Lettering.Fine) + 0.4);
}
