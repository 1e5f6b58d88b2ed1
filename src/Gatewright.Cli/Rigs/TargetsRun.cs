using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Rigging;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Rigs;

/// <summary>Runs <c>gatewright targets</c>.</summary>
internal sealed class TargetsRun(Terminal terminal)
{
    public int Run(TargetsRequest request) =>
        request.Place is null ? Show(request) : StoreErrors.Guard(request.Form, terminal, () => Show(request));

    private int Show(TargetsRequest request)
    {
        var errors = new List<InputProblem>();
        RigTargets targets = RigTargets.Starting(request.Class, request.Crew);
        if (request.Place is { } place && ClubChoice.OpenAsync(place, errors, CancellationToken.None).GetAwaiter().GetResult() is { } opened)
        {
            targets = TargetsView.Of(opened.Club, request.Class, request.Crew);
        }

        if (errors.Count > 0)
        {
            return InputErrors.Tell(errors, 0, request.Form, terminal, "Nothing was shown.");
        }

        Tell(targets, request);
        return ExitStatus.Good;
    }

    private void Tell(RigTargets targets, TargetsRequest request)
    {
        if (request.Form == Form.Json)
        {
            terminal.Output.Write(CheckJson.Text(new TargetsDocument(
                TargetsDocument.Name, targets.Class.Name, targets.Crew?.Word(), [.. targets.All.Select(RigMapping.Of)])));
            terminal.Output.Write('\n');
            return;
        }

        Statements told = Told(targets);
        PagePrinter.Print(request.Form == Form.Drawn ? told.Wrapped(WidthOption.Of(request.Width, terminal)) : told.Spoken(), terminal);
    }

    private static Statements Told(RigTargets targets)
    {
        var told = new Statements();
        string crew = targets.Crew is { } known ? English.Rig.Crew(known) : English.Rig.AnyCrew;
        told.Add($"Targets of the rig, {targets.Class}, {crew}:");
        foreach (RigTarget target in targets.All.OrderBy(t => t.Measure).ThenBy(t => t.Aspect).ThenBy(t => t.Side))
        {
            told.Add($"{RigTargetWords.Named(target)} {English.Rig.Target(target, target.Measure.Unit())} ({English.Rig.Source(target.Source)}).");
        }

        told.Pause();
        told.Add("How each is measured:");
        foreach (RigMeasure measure in RigMeasures.All)
        {
            if (measure.IsOf(targets.Class.Rowing))
            {
                told.Add($"{English.Rig.Measure(measure)}: {English.Rig.How(measure)} Taken once, {English.Rig.Usual(measure)}.");
            }
        }

        return told;
    }
}
