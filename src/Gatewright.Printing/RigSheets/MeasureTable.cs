using System.Globalization;
using Gatewright.Core;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.RigSheets;

/// <summary>
/// The measures of a boat's rig, a row each, seat by seat, against their targets. What was not taken is a line to write on, so
/// that a sheet is a form as well.
/// </summary>
internal sealed class MeasureTable(Imprint imprint, IReadOnlyList<SheetMeasure> measures, BoatClass boatClass)
{
    private const double NameWidth = 46.6;
    private const double TargetWidth = 25.4;
    private const double UncertaintyWidth = 9;
    private const double HeaderHeight = 5.2;

    private bool IsNarrow => boatClass.Seats > 4;

    private double Row => IsNarrow ? 5 : 6.2;

    private double Column => (Frame.Width - NameWidth - TargetWidth - UncertaintyWidth) / boatClass.Seats;

    /// <summary>How high it is, millimetres.</summary>
    public double Height => measures.Count == 0 ? 0 : Flow.HeadingHeight + HeaderHeight + (measures.Count * Row) + 1;

    /// <summary>Draws it; nothing where no measure is known.</summary>
    public void Draw(Flow flow)
    {
        if (measures.Count > 0)
        {
            flow.Room(Height);
            flow.Heading(imprint.Texts["Sheet.Rig"]);
            Header(flow);
            foreach (SheetMeasure measure in measures)
            {
                Measure(flow, measure);
            }

            flow.Y += 1;
        }
    }

    private void Header(Flow flow)
    {
        double y = flow.Y + 3.8;
        flow.Leaf.Text(imprint.Texts["Rig.Target"], Frame.Left + NameWidth, y, Lettering.NoteBold);
        flow.Leaf.Text(imprint.Texts["Rig.Uncertainty"], Frame.Left + NameWidth + TargetWidth, y, Lettering.NoteBold);
        for (int seat = 1; seat <= boatClass.Seats; seat++)
        {
            flow.Leaf.Text(seat.ToString(CultureInfo.InvariantCulture), Centre(seat), y, Lettering.NoteBold, Align.Middle);
        }

        flow.Y += HeaderHeight;
        flow.Leaf.Line(Frame.Left, flow.Y, Frame.Right, flow.Y);
    }

    private double Centre(int seat) => Frame.Left + NameWidth + TargetWidth + UncertaintyWidth + ((seat - 0.5) * Column);

    private void Measure(Flow flow, SheetMeasure measure)
    {
        Leaf leaf = flow.Leaf;
        double y = flow.Y + (Row * 0.5) + 1.3;
        leaf.Fit(measure.Name, Frame.Left, y, NameWidth - 1.5, Lettering.Note, Lettering.LeastInTheHand);
        leaf.Fit(measure.Target ?? "–", Frame.Left + NameWidth, y, TargetWidth - 1.5, Lettering.Note, Lettering.LeastInTheHand);
        leaf.Text(measure.WidestU ?? string.Empty, Frame.Left + NameWidth + TargetWidth, y, Lettering.Note);
        for (int seat = 1; seat <= measure.Seats.Count; seat++)
        {
            if (measure.Seats[seat - 1] is { } value)
            {
                Value(leaf, value, Centre(seat), y);
            }
            else
            {
                TickBox.Rule(leaf, Centre(seat) - (0.36 * Column), y - 0.4, 0.72 * Column);
            }
        }

        flow.Y += Row;
        leaf.Line(Frame.Left, flow.Y, Frame.Right, flow.Y, 0.1);
    }

    private void Value(Leaf leaf, SheetValue value, double middle, double y)
    {
        Lettering lettering = IsNarrow ? Lettering.Note : Lettering.Work;
        string told = value.IsExpected ? $"({value.Value})" : value.Value;
        double mark = IsNarrow ? 2.6 : 3.4;
        double forMark = value.Verdict is null ? 0 : mark + 0.5;
        double left = middle - ((forMark + leaf.Width(told, lettering)) / 2);
        if (value.Verdict is { } verdict)
        {
            VerdictShape.Draw(leaf, verdict, left + (mark / 2), y - 1.3, mark);
        }

        leaf.Text(told, left + forMark, y, lettering);
    }
}
