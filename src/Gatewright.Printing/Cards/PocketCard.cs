using System.Globalization;
using Gatewright.Core;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Printing.RigSheets;

namespace Gatewright.Printing.Cards;

/// <summary>A boat on a card for the pocket, read in the hand: its verdict, each gate's pitch, its rig.</summary>
internal sealed class PocketCard(Imprint imprint, RigSheet sheet)
{
    /// <summary>Half of A4's width.</summary>
    public const double Width = 105;

    /// <summary>A quarter of its height.</summary>
    public const double Height = 74.25;

    private const double Inset = 8;
    private const double Row = 4.05;
    private const double SeatWidth = 9;

    /// <summary>Draws it with its top left corner at a place.</summary>
    public void Draw(Leaf leaf, double x, double y)
    {
        double left = x + Inset;
        double right = x + Width - Inset;
        Head(leaf, left, right, y);
        double next = y + 22;
        if (sheet.Holds.Count > 0)
        {
            VerdictShape.Tag(leaf, left + 2, next - 1.2, 4.4);
            next = Short(leaf, $"{imprint.Texts["Held"]}: {sheet.Holds[0]}", left + 6, next, right - left - 6);
        }
        else if (sheet.StaysAshore)
        {
            next = Short(leaf, imprint.Texts[sheet.Waits ? "Shed.AshoreUnsure" : "Shed.StaysAshore"], left, next, right - left);
        }

        if (sheet.Class is { } boatClass)
        {
            next = Gates(leaf, left, right, next, boatClass);
        }

        double last = y + Height - Inset;
        double inFull = last - ((leaf.Wrap(Foot(), right - left, Lettering.Small).Count - 1) * Lettering.Small.LineMm);
        double forRig = leaf.Height(RigTold(), right - left, Lettering.Small) + 0.4;
        if (next + forRig <= inFull - Lettering.Small.LineMm)
        {
            leaf.Paragraph(Foot(), left, inFull, right - left, Lettering.Small);
            Rig(leaf, left, right - left, next, inFull - Lettering.Small.LineMm);
        }
        else
        {
            // Room for the boat's own figures comes before the size of these.
            leaf.Fit(Foot(), left, last, right - left, Lettering.Small, 6.5);
            Rig(leaf, left, right - left, next, last - Lettering.Small.LineMm);
        }
    }

    /// <summary>What stands behind the figures: how sure they are, and when they were printed.</summary>
    private string Foot()
    {
        string printed = imprint.Texts["Foot.Printed", imprint.Say.Language.Day(imprint.Day)];
        return sheet.WidestU is { } u ? $"{imprint.Texts["Card.Foot", u]} {printed}." : printed;
    }

    /// <summary>Two lines at most.</summary>
    private static double Short(Leaf leaf, string text, double left, double y, double width)
    {
        IReadOnlyList<string> lines = leaf.Wrap(text, width, Lettering.NoteBold);
        for (int i = 0; i < Math.Min(2, lines.Count); i++)
        {
            bool isCut = i == 1 && lines.Count > 2;
            leaf.Text(isCut ? leaf.Head(lines[1] + "…", width, Lettering.NoteBold) : lines[i], left, y, Lettering.NoteBold);
            y += 3.8;
        }

        return y;
    }

    private void Head(Leaf leaf, double left, double right, double y)
    {
        double first = y + Inset + 4;
        PlumbLine.Draw(leaf, left - 2.2, y + Inset, y + Height - Inset, 0.5);
        double forClass = sheet.Class is { } c ? leaf.Width(c.Name, Lettering.Heading) + 3 : 0;
        leaf.Fit(sheet.Boat, left, first, right - left - forClass, Lettering.Heading, Lettering.LeastOnCards);
        leaf.Text(sheet.Class?.Name ?? string.Empty, right, first, Lettering.Heading, Align.Right);
        VerdictShape.Draw(leaf, sheet.Verdict, left + 2.4, first + 4.4, 4.8);
        leaf.Text(sheet.Word, left + 6.4, first + 5.9, Lettering.WorkBold);
        string read = sheet.LastRead is { } day ? $"{imprint.Texts["Shed.LastRead"]} {imprint.Say.Language.Day(day)}" : string.Empty;
        leaf.Text(read, right, first + 5.9, Lettering.Small, Align.Right);
    }

    /// <summary>A row a seat; in a sculling boat port beside starboard.</summary>
    private double Gates(Leaf leaf, double left, double right, double y, BoatClass boatClass)
    {
        bool isScull = boatClass.Rowing == Rowing.Scull;
        y += isScull ? 3.4 : 0;
        double block = isScull ? (right - left - SeatWidth) / 2 : right - left - SeatWidth;
        foreach (Side side in isScull ? [Side.Port, Side.Starboard] : (ReadOnlySpan<Side>)[Side.Port])
        {
            double at = left + SeatWidth + (side == Side.Port ? 0 : block);
            for (int station = 0; station < 3; station++)
            {
                leaf.Fit(
                    imprint.Say.Names.Station(Stations.All[station]), Column(at, block, station, isScull), y, Step(block, isScull) - 0.8, Lettering.Small, 6.5, Align.Right);
            }

            if (isScull)
            {
                leaf.Text(imprint.Say.Names.Side(side), at + 1.2, y - 3.4, Lettering.Small);
            }
        }

        y += 0.9;
        leaf.Line(left, y, right, y, 0.2);
        foreach (IGrouping<int, SheetGate> seat in sheet.Gates.GroupBy(g => g.Gate.Seat))
        {
            y += Row;
            leaf.Text(seat.Key.ToString(CultureInfo.InvariantCulture), left, y - 0.6, Lettering.NoteBold);
            foreach (SheetGate gate in seat)
            {
                double at = left + SeatWidth + (isScull && gate.Gate.Side == Side.Starboard ? block : 0);
                Gate(leaf, gate, at, block, y - 0.6, isScull);
            }
        }

        return y;
    }

    private void Gate(Leaf leaf, SheetGate gate, double at, double block, double y, bool isScull)
    {
        VerdictShape.Draw(leaf, gate.Verdict, at + (isScull ? 2.6 : 1), y - 1.2, 3.2);
        if (!isScull)
        {
            leaf.Text(imprint.Say.Names.Side(gate.Gate.Side), at + 4, y, Lettering.Small);
        }

        for (int station = 0; station < 3; station++)
        {
            SheetPitch? pitch = gate.At(Stations.All[station]);
            string figure = pitch is null ? "–" : pitch.IsRead ? pitch.Value : $"({pitch.Value})";
            leaf.Text(figure, Column(at, block, station, isScull), y, pitch?.IsRead == true ? Lettering.NoteBold : Lettering.Note, Align.Right);
        }
    }

    private static double Step(double block, bool isScull) => isScull ? (block - 5) / 3 : (block - 24) / 3;

    private static double Column(double at, double block, int station, bool isScull) =>
        at + (isScull ? 5 : 24) + ((station + 1) * Step(block, isScull)) - 0.8;

    /// <summary>
    /// The measures of the rig that were taken: one figure where all seats have the same, else each that occurs. Where none
    /// was, the targets that a boat is set up by first.
    /// </summary>
    private void Rig(Leaf leaf, double left, double width, double y, double bottom)
    {
        string whole = RigTold();
        if (whole.Length == 0 || bottom - y <= Lettering.Small.LineMm)
        {
            return;
        }

        Lettering lettering = leaf.Height(whole, width, Lettering.Note) + 0.4 <= bottom - y ? Lettering.Note : Lettering.Small;
        int most = Math.Max(1, (int)((bottom - y) / lettering.LineMm));
        string text = whole;
        for (int count = Measures().Count - 1; count > 0 && leaf.Wrap(text, width, lettering).Count > most; count--)
        {
            text = $"{RigTold(count)} · …";
        }

        leaf.Paragraph(text, left, y + lettering.LineMm + 0.4, width, lettering);
    }

    /// <summary>The first of its measures, or all; empty for none.</summary>
    private string RigTold(int first = int.MaxValue)
    {
        IReadOnlyList<string> measures = Measures();
        return measures.Count == 0 ? string.Empty
            : (IsMeasured ? string.Empty : $"{imprint.Texts["Rig.Target"]}: ") + string.Join(" · ", measures.Take(first));
    }

    private IReadOnlyList<string> Measures() =>
    [
        .. sheet.Class is null ? [] : sheet.Measures.Where(m => IsMeasured ? m.IsMeasured : m.IsFirst)
            .GroupBy(m => (m.Measure, m.Unit))
            .Select(g => $"{g.Key.Measure} {string.Join(" / ", g.SelectMany(m => Figures(m, IsMeasured)).Distinct())} {g.Key.Unit}"),
    ];

    private bool IsMeasured => sheet.Measures.Any(m => m.IsMeasured);

    private static IEnumerable<string> Figures(SheetMeasure measure, bool isTaken) => isTaken
        ? measure.Seats.OfType<SheetValue>().Select(v => v.IsExpected ? $"({v.Value})" : v.Value)
        : measure.Target is { } target ? [target] : [];
}
