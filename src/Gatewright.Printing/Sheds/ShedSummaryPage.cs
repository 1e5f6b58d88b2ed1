using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Sheds;

/// <summary>Lays the summary out.</summary>
internal sealed class ShedSummaryPage(Book book, IReadOnlyList<RackOfBoats> racks, ILookup<string, RigChange> changes)
{
    private const double NameAt = Frame.Left + 10;
    private const double ClassAt = Frame.Left + 92;
    private const double WordAt = Frame.Left + 108;
    private const double ReadAt = Frame.Right;
    private const double NameWidth = ClassAt - NameAt - 3;
    private const double Row = 8;

    private readonly Imprint _imprint = book.Imprint;

    /// <summary>Draws it, on as many pages as it takes.</summary>
    public void Draw()
    {
        var flow = new Flow(book, Columns);
        flow.Y += Lettering.Verdict.CapitalMm + 1;
        flow.Leaf.Fit(_imprint.Club, Frame.Left, flow.Y, Frame.Width, Lettering.Verdict, Lettering.LeastAtArmsLength);
        flow.Y += 2;
        flow.Paragraph(Summary(), Lettering.Work, after: 2);
        Columns(flow);
        foreach (RackOfBoats rack in racks)
        {
            Rack(flow, rack);
        }
    }

    private string Summary()
    {
        List<BoatStanding> all = [.. racks.SelectMany(r => r.Boats)];
        IEnumerable<string> counts = Verdicts.All.Reverse().Select(v => _imprint.Say.Names.Verdict(v))
            .Append(_imprint.Texts["Verdict.ReadAgain"])
            .Append(_imprint.Texts["Verdict.NotRead"])
            .Select(word => (Word: word, Count: all.Count(b => _imprint.Word(b) == word)))
            .Where(c => c.Count > 0)
            .Select(c => $"{c.Count} {c.Word}");
        return _imprint.Texts["Shed.Summary", all.Count, string.Join(", ", counts), all.Count(b => b.StaysAshore)];
    }

    private void Columns(Flow flow)
    {
        flow.Y += 4;
        Leaf leaf = flow.Leaf;
        leaf.Text(_imprint.Texts["Shed.Boat"], NameAt, flow.Y, Lettering.NoteBold);
        leaf.Text(_imprint.Texts["Shed.Class"], ClassAt, flow.Y, Lettering.NoteBold);
        leaf.Text(_imprint.Texts["Shed.Verdict"], WordAt, flow.Y, Lettering.NoteBold);
        leaf.Text(_imprint.Texts["Shed.LastRead"], ReadAt, flow.Y, Lettering.NoteBold, Align.Right);
        flow.Y += 1.5;
        leaf.Line(Frame.Left, flow.Y, Frame.Right, flow.Y, 0.4);
    }

    private void Rack(Flow flow, RackOfBoats rack)
    {
        // A rack's name alone at the foot of a page would belong to nothing.
        flow.Room(Lettering.Heading.LineMm + 3 + Height(rack.Boats[0], flow));
        flow.Y += 1.5 + Lettering.Heading.LineMm;
        string title = rack.Title is { } name ? _imprint.Texts["Sheet.Rack", name] : _imprint.Texts["Shed.NoRack"];
        flow.Leaf.Fit(title, Frame.Left, flow.Y, Frame.Width, Lettering.Heading, Lettering.LeastAtArmsLength);
        flow.Y += 1.8;
        foreach (BoatStanding boat in rack.Boats)
        {
            flow.Room(Height(boat, flow));
            Boat(flow, boat);
        }
    }

    private double Height(BoatStanding boat, Flow flow) => Row
        + Under(flow.Leaf, boat).Sum(line => flow.Leaf.Height(line, Frame.Right - NameAt, Lettering.Note))
        + Bars(boat).Sum(bar => BarHeight(flow.Leaf, bar));

    private void Boat(Flow flow, BoatStanding boat)
    {
        Leaf leaf = flow.Leaf;
        double y = flow.Y + 5.6;
        VerdictShape.Draw(leaf, boat.Shown, Frame.Left + 4, y - 1.5, 5.6);
        leaf.Fit(boat.View.Name, NameAt, y, NameWidth, Lettering.WorkBold, Lettering.NoteBold.Points);
        leaf.Text(boat.View.Class?.Name ?? "–", ClassAt, y, Lettering.Work);
        leaf.Fit(_imprint.Word(boat), WordAt, y, 40, Lettering.Work, Lettering.LeastInTheHand);
        leaf.Text(boat.LastRead is { } day ? _imprint.Say.Language.Day(day) : "–", ReadAt, y, Lettering.Work, Align.Right);
        flow.Y += Row;
        foreach (string line in Under(leaf, boat))
        {
            flow.Y = leaf.Paragraph(line, NameAt, flow.Y + 2.4, Frame.Right - NameAt, Lettering.Note) - 2.4;
        }

        foreach (string bar in Bars(boat))
        {
            Bar(flow, bar);
        }

        leaf.Line(Frame.Left, flow.Y, Frame.Right, flow.Y, 0.1);
    }

    /// <summary>A name that was cut, in full; changes of its rig that are under way; which gates are not good, or not read.</summary>
    private IEnumerable<string> Under(Leaf leaf, BoatStanding boat)
    {
        if (leaf.Width(boat.View.Name, Lettering.NoteBold) > NameWidth)
        {
            yield return boat.View.Name;
        }

        foreach (RigChange change in changes[boat.View.Key])
        {
            yield return _imprint.Texts["Change.Under", change.Plan.Rig, change.StepsDone.Count, change.Plan.Steps.Count];
        }

        if (boat.Check is not { } check)
        {
            yield break;
        }

        List<GatePlace> gates = [.. check.Verdict.Gates.Where(g => g.Verdict != Verdict.Good).OrderByDescending(g => g.Verdict).Select(g => g.Gate)];
        if (gates.Count > 0)
        {
            yield return gates.Count > 4
                ? _imprint.Texts["Shed.ManyGates", gates.Count, _imprint.Say.Names.Gates(gates.Take(3))]
                : Words.Sentence.Capital(_imprint.Say.Names.Gates(gates));
        }

        if (check.Verdict.NotRead.Count > 0)
        {
            yield return check.Verdict.NotRead.Count > 4
                ? _imprint.Texts["Shed.ManyNotRead", check.Verdict.NotRead.Count]
                : _imprint.Texts["Sheet.GatesNotRead", _imprint.Say.Names.Gates(check.Verdict.NotRead)];
        }
    }

    private IEnumerable<string> Bars(BoatStanding boat) => boat.Holds.Count > 0
        ? boat.Holds.Select(h => _imprint.Texts["Shed.Held", ((Held)h.Fact).In(_imprint.Say.Language)])
        : boat.StaysAshore ? [_imprint.Texts[boat.WaitsForReading ? "Shed.AshoreUnsure" : "Shed.StaysAshore"]] : [];

    private static double BarHeight(Leaf leaf, string text) => leaf.Height(text, BarWidth, Lettering.WorkBold) + 2.4;

    private const double BarWidth = Frame.Right - NameAt - 12;

    /// <summary>White on black, with its tag: the one black bar on the page.</summary>
    private static void Bar(Flow flow, string text)
    {
        Leaf leaf = flow.Leaf;
        double height = BarHeight(leaf, text);
        leaf.Bar(NameAt - 2, flow.Y, Frame.Right - NameAt + 2, height - 1);
        leaf.WhiteBar(NameAt - 0.8, flow.Y + 0.8, 7, height - 2.6);
        VerdictShape.Tag(leaf, NameAt + 2.7, flow.Y + (height / 2) - 0.5, 4.8);
        double y = flow.Y + Lettering.WorkBold.CapitalMm + 1.3;
        foreach (string line in leaf.Wrap(text, BarWidth, Lettering.WorkBold))
        {
            leaf.Text(line, NameAt + 8, y, Lettering.WorkBold, isWhite: true);
            y += Lettering.WorkBold.LineMm;
        }

        flow.Y += height;
    }
}
