using Gatewright.Core;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Printing.RigSheets;
using Gatewright.Words;

namespace Gatewright.Printing.JobSheets;

/// <summary>Lays a job out: what and where, the steps to tick, parts, cautions where the hand is, and the re-check to write down.</summary>
internal sealed class JobSheetPage(Book book, Club club, JobView job, BoatStanding? boat, IReadOnlyList<string> steps)
{
    private const double PlanWidth = 48;

    private readonly Imprint _imprint = book.Imprint;
    private readonly BoatView _view = boat?.View ?? new BoatView(club, job.Plan.Boat);

    /// <summary>Draws it.</summary>
    public void Draw()
    {
        var flow = new Flow(book, Again);
        BoatHead.Draw(flow, _view.Name, _view.Class?.Name);
        Head(flow);
        Cautions(flow);
        double beside = Plan(flow);
        flow.Narrow(beside, PlanWidth);
        flow.Heading(_imprint.Texts["Job.Steps"]);
        flow.Y += 1;
        for (int step = 0; step < steps.Count; step++)
        {
            flow.ToTick(steps[step], Lettering.Work, job.StepsDone.Contains(step));
        }

        Parts(flow);
        flow.Widen();
        new RecheckForm(_imprint, job).Draw(flow);
    }

    private void Again(Flow flow)
    {
        flow.Leaf.Fit(_imprint.Texts["Continued", _view.Name], Frame.Left, flow.Y + 4, Frame.Width, Lettering.Heading, Lettering.LeastAtArmsLength);
        flow.Y += 7;
    }

    private void Head(Flow flow)
    {
        Wording say = _imprint.Say;
        string remedies = string.Join(", ", JobCautions.Remedies(job).Select(say.Names.Remedy));
        string place = job.Gate is { } gate ? say.Names.GateFirst(gate) : Sentence.Capital(say.Names.WholeBoat);
        flow.Y += 1;
        flow.Paragraph(remedies.Length == 0 ? place : $"{place}: {remedies}", Lettering.Verdict);
        flow.Paragraph(_imprint.Texts["Job.Cause", say.Names.Cause(job.Plan.Cause)], Lettering.Work);
        flow.Paragraph(
            _imprint.Texts["Job.Planned", _imprint.NameOf(job.Planned.Entry.Member), say.Language.Day(Day.Of(job.Planned.Entry))], Lettering.Note);
    }

    /// <summary>The boat in plan at the right, the gate ringed.</summary>
    /// <returns>How far down it reaches; where the class is not known, nowhere.</returns>
    private double Plan(Flow flow)
    {
        if (_view.Class is not { } boatClass)
        {
            return flow.Y;
        }

        var plan = new HullInPlan(boatClass, Frame.Right - (PlanWidth / 2), flow.Y + 5, boatClass.Seats == 8 ? 8 : 10, 7);
        Leaf leaf = flow.Leaf;
        plan.Draw(leaf, BoatGates.Of(club, _view), job.Gate);
        leaf.Text(_imprint.Say.Names.Side(Side.Port), plan.Keel - 5, flow.Y + 5, Lettering.Note, Align.Right);
        leaf.Text(_imprint.Say.Names.Side(Side.Starboard), plan.Keel + 5, flow.Y + 5, Lettering.Note);
        return plan.Bottom + 3;
    }

    private void Parts(Flow flow)
    {
        if (job.Plan.Parts.Count > 0)
        {
            flow.Heading(_imprint.Texts["Job.Parts"]);
            flow.Y += 1;
            foreach (PartUsed part in job.Plan.Parts)
            {
                flow.ToTick(_imprint.Say.Names.Part(new PartCount(JobPart.PartOf(part), part.Count)), Lettering.Work);
            }
        }
    }

    /// <summary>What is to be minded, before the steps that it is minded in; but what already stands among the steps or at the foot of every page.</summary>
    private void Cautions(Flow flow)
    {
        IReadOnlyList<string> cautions = _imprint.Say.Cautions.Each(
            JobCautions.Of(JobCautions.Remedies(job), boat).Where(c => c is not Caution.Defer));
        flow.Heading(_imprint.Texts["Job.Mind"]);
        foreach (string caution in cautions.Except(steps))
        {
            HeldBox.Draw(flow, null, caution);
        }
    }
}
