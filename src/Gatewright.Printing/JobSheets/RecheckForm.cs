using Gatewright.Journal.Facts;
using Gatewright.Journal.Views;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Words;

namespace Gatewright.Printing.JobSheets;

/// <summary>Where the re-check is written down: what each station should show, a box for what it does, and how the boat lay.</summary>
internal sealed class RecheckForm(Imprint imprint, JobView job)
{
    private const double StationWidth = 38;
    private const double ExpectedWidth = 62;
    private const int LinesBelow = 3;
    private const double Row = TickBox.WritingHeight + 2;

    /// <summary>Draws it, all on one page.</summary>
    public void Draw(Flow flow)
    {
        string how = imprint.Texts[job.Plan.Expected.Count > 0 ? "Job.RecheckHow" : "Job.ReadAgain"];
        flow.Room(Flow.HeadingHeight + flow.Leaf.Height(how, Frame.Width, Lettering.Note) + ((job.Plan.Expected.Count + LinesBelow) * Row) + 2);
        flow.Heading(imprint.Texts["Job.Recheck"]);
        flow.Paragraph(how, Lettering.Note);
        flow.Y += 1;
        foreach (ExpectedAt expected in job.Plan.Expected.OrderBy(e => e.Station))
        {
            Station(flow, expected);
        }

        Lying(flow);
        Found(flow);
    }

    private void Station(Flow flow, ExpectedAt expected)
    {
        Leaf leaf = flow.Leaf;
        double y = flow.Y + 6.2;
        string from = imprint.Say.Figures.Degrees((double)expected.From);
        string to = imprint.Say.Figures.Degrees((double)expected.To);
        leaf.Text(Sentence.Capital(imprint.Say.Names.Station(expected.Station)), Frame.Left, y, Lettering.WorkBold);
        leaf.Text(imprint.Texts["Job.Expect", from, to], Frame.Left + StationWidth, y, Lettering.Work);
        double box = Frame.Left + StationWidth + ExpectedWidth;
        leaf.Box(box, flow.Y, 24, TickBox.WritingHeight, 0.4);
        leaf.Text("°", box + 25, y, Lettering.Work);
        leaf.Text(imprint.Texts["Job.Again"], box + 48.5, y, Lettering.Note, Align.Right);
        leaf.Box(box + 50, flow.Y, 24, TickBox.WritingHeight, 0.4);
        flow.Y += Row;
    }

    /// <summary>How the boat lay, and what it was read with.</summary>
    private void Lying(Flow flow)
    {
        Leaf leaf = flow.Leaf;
        double y = flow.Y + 6.2;
        var pencil = new PencilLine(leaf, y);
        pencil.Tick(imprint.Say.Names.Lie(Core.Lie.Upright));
        pencil.Tick(imprint.Say.Names.Lie(Core.Lie.Inverted));
        pencil.Write(imprint.Texts["Level.BowHigh"], 16);
        pencil.Write(imprint.Texts["Level.PortLow"], 16);
        pencil.Write(imprint.Texts["Gauge"], Frame.Right - pencil.X - leaf.Width(imprint.Texts["Gauge"], Lettering.Note) - 2);
        flow.Y += Row;
    }

    private void Found(Flow flow)
    {
        Leaf leaf = flow.Leaf;
        var found = new PencilLine(leaf, flow.Y + 6.2);
        found.Say(imprint.Texts["Job.Found"]);
        found.Tick(imprint.Texts["Job.AsPlanned"]);
        found.Tick(imprint.Texts["Job.Other"]);
        found.Rule(Frame.Right - found.X);
        flow.Y += Row;
        var done = new PencilLine(leaf, flow.Y + 6.2);
        done.Write(imprint.Texts["Job.DoneBy"], 84);
        done.Write(imprint.Texts["Date"], Frame.Right - done.X - leaf.Width(imprint.Texts["Date"], Lettering.Note) - 2);
        flow.Y += Row;
    }
}
