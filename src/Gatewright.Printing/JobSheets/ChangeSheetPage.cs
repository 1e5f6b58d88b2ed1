using Gatewright.Core.Changing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Views;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Printing.RigSheets;
using Gatewright.Words;

namespace Gatewright.Printing.JobSheets;

/// <summary>Lays a change of the rig out: the steps to tick, parts, cautions, and what to read again with a box for each figure.</summary>
internal sealed class ChangeSheetPage(Book book, RigChange change, BoatView view)
{
    private const double BoxAt = Frame.Right - 60;
    private const double Row = TickBox.WritingHeight + 2;

    private readonly Imprint _imprint = book.Imprint;
    private readonly IReadOnlyList<ReadAgain> _again =
        [.. change.Again(MeasuringSettings.Default).Where(a => a.State != ReadAgainState.Done)];

    /// <summary>Draws it.</summary>
    public void Draw()
    {
        var flow = new Flow(book, Again);
        BoatHead.Draw(flow, view.Name, view.Class?.Name);
        flow.Y += 1;
        flow.Paragraph(_imprint.Texts["Change.To", change.Plan.Rig], Lettering.Verdict);
        flow.Paragraph(
            _imprint.Texts["Job.Planned", _imprint.NameOf(change.Planned.Entry.Member), _imprint.Say.Language.Day(Day.Of(change.Planned.Entry))], Lettering.Note);
        Cautions(flow);
        flow.Heading(_imprint.Texts["Job.Steps"]);
        flow.Y += 1;
        for (int step = 0; step < change.Plan.Steps.Count; step++)
        {
            flow.ToTick(change.Plan.Steps[step].In(_imprint.Say.Language), Lettering.Work, change.StepsDone.Contains(step));
        }

        Parts(flow);
        ToRead(flow);
        Done(flow);
    }

    private void Again(Flow flow)
    {
        flow.Leaf.Fit(_imprint.Texts["Continued", view.Name], Frame.Left, flow.Y + 4, Frame.Width, Lettering.Heading, Lettering.LeastAtArmsLength);
        flow.Y += 7;
    }

    private void Parts(Flow flow)
    {
        if (change.PartsWanted.Count > 0)
        {
            flow.Heading(_imprint.Texts["Job.Parts"]);
            flow.Y += 1;
            foreach (PartUsed part in change.PartsWanted)
            {
                flow.ToTick(_imprint.Say.Names.Part(new PartCount(JobPart.PartOf(part), part.Count)), Lettering.Work);
            }
        }
    }

    private void Cautions(Flow flow)
    {
        flow.Heading(_imprint.Texts["Job.Mind"]);
        foreach (string caution in _imprint.Say.Cautions.Each(change.Cautions.Where(c => c is not Caution.Defer)))
        {
            HeldBox.Draw(flow, null, caution);
        }
    }

    private void ToRead(Flow flow)
    {
        if (_again.Count == 0)
        {
            return;
        }

        flow.Heading(_imprint.Texts["Job.Recheck"]);
        flow.Paragraph(_imprint.Texts["Change.ReadHow"], Lettering.Note);
        flow.Y += 1;
        foreach (ReadAgain again in _again)
        {
            Read(flow, again.At);
        }
    }

    /// <summary>What, where, what it is to be, and a box for what it is.</summary>
    private void Read(Flow flow, ReadAgainAt at)
    {
        if (RigItems.OfWord(at.Item) is not { } item)
        {
            return;
        }

        Wording say = _imprint.Say;
        flow.Room(Row);
        Leaf leaf = flow.Leaf;
        double y = flow.Y + 6.2;
        string what = $"{Sentence.Capital(say.Rig.Place(new(at.Seat, at.Side)))}: {say.Changes.Item(item)}";
        string wanted = at is { From: { } from, To: { } to }
            ? $", {_imprint.Texts["Change.Between", say.Changes.Figure(item, (double)from), say.Changes.Figure(item, (double)to)]}"
            : string.Empty;
        leaf.Fit(what + wanted, Frame.Left, y, BoxAt - Frame.Left - 3, Lettering.Work, Lettering.Note.Points);
        leaf.Box(BoxAt, flow.Y, 28, TickBox.WritingHeight, 0.4);
        leaf.Text(item.IsAngle() ? "°" : "cm", BoxAt + 29, y, Lettering.Work);
        flow.Y += Row;
    }

    private void Done(Flow flow)
    {
        flow.Room(Row);
        var done = new PencilLine(flow.Leaf, flow.Y + 6.2);
        done.Write(_imprint.Texts["Job.DoneBy"], 84);
        done.Write(_imprint.Texts["Date"], Frame.Right - done.X - flow.Leaf.Width(_imprint.Texts["Date"], Lettering.Note) - 2);
        flow.Y += Row;
    }
}
