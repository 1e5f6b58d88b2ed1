using System.Globalization;
using Gatewright.Core;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.RigSheets;

/// <summary>The measures of a boat's rig, a row each, seat by seat, against their targets.</summary>
internal sealed class MeasureTable(Imprint imprint, IReadOnlyList<SheetMeasure> measures)
{
    private const double Row = 6.2;
    private const double NameWidth = 41;
    private const double TargetWidth = 23;

    /// <summary>How high it is, millimetres.</summary>
    public static double Height(IReadOnlyList<SheetMeasure> measures, BoatClass boatClass) =>
        measures.Count == 0 ? 0 : Lettering.Heading.LineMm + 3 + ((measures.Count + 1) * RowHeight(boatClass));

    /// <summary>Draws it; nothing where no measure is known.</summary>
    public void Draw(Flow flow, BoatClass boatClass)
    {
        if (measures.Count == 0)
        {
            return;
        }

        flow.Room(Height(measures, boatClass));
        flow.Heading(imprint.Texts["Sheet.Rig"]);
        double column = (Frame.Width - NameWidth - TargetWidth) / boatClass.Seats;
        Header(flow, boatClass, column);
        foreach (SheetMeasure measure in measures)
        {
            Measure(flow, measure, column, RowHeight(boatClass));
        }

        flow.Y += 1;
    }

    private static double RowHeight(BoatClass boatClass) => boatClass.Seats > 4 ? Row + 2.6 : Row;

    private void Header(Flow flow, BoatClass boatClass, double column)
    {
        double y = flow.Y + 4;
        flow.Leaf.Text(imprint.Texts["Rig.Target"], Frame.Left + NameWidth, y, Lettering.NoteBold);
        for (int seat = 1; seat <= boatClass.Seats; seat++)
        {
            flow.Leaf.Text(seat.ToString(CultureInfo.InvariantCulture), Centre(seat, column), y, Lettering.NoteBold, Align.Middle);
        }

        flow.Y += 5.6;
        flow.Leaf.Line(Frame.Left, flow.Y, Frame.Right, flow.Y);
    }

    private static double Centre(int seat, double column) => Frame.Left + NameWidth + TargetWidth + ((seat - 0.5) * column);

    /// <summary>A row: in a long boat ± stands under its value, else behind it.</summary>
    private void Measure(Flow flow, SheetMeasure measure, double column, double height)
    {
        Leaf leaf = flow.Leaf;
        double y = flow.Y + 4.5;
        leaf.Fit(measure.Name, Frame.Left, y, NameWidth - 1.5, Lettering.Note, Lettering.LeastInTheHand);
        leaf.Fit(measure.Target ?? "–", Frame.Left + NameWidth, y, TargetWidth - 1.5, Lettering.Note, Lettering.LeastInTheHand);
        for (int seat = 1; seat <= measure.Seats.Count; seat++)
        {
            if (measure.Seats[seat - 1] is { } value)
            {
                Value(leaf, value, Centre(seat, column), y, height > Row);
            }
            else
            {
                TickBox.Rule(leaf, Centre(seat, column) - (0.35 * column), y, 0.7 * column);
            }
        }

        flow.Y += height;
        leaf.Line(Frame.Left, flow.Y, Frame.Right, flow.Y, 0.1);
    }

    private static void Value(Leaf leaf, SheetValue value, double middle, double y, bool isNarrow)
    {
        Lettering lettering = isNarrow ? Lettering.Note : Lettering.Work;
        string u = $"± {value.U}";
        double forU = isNarrow ? 0 : leaf.Width(" " + u, Lettering.Small) + 0.8;
        double forMark = value.Verdict is null ? 0 : 4;
        double forValue = leaf.Width(value.Value, lettering);
        double left = middle - ((forMark + forValue + forU) / 2);
        if (value.Verdict is { } verdict)
        {
            VerdictShape.Draw(leaf, verdict, left + 1.6, y - 1.3, 3.2);
        }

        leaf.Text(value.Value, left + forMark, y, lettering);
        if (isNarrow)
        {
            leaf.Text(u, middle, y + 3.4, Lettering.Small, Align.Middle);
        }
        else
        {
            leaf.Text(u, left + forMark + forValue + 1.4, y, Lettering.Small);
        }
    }
}
