using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Recording;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;
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
        RigTargets? targets = request.Place is null
            ? RigTargets.Starting(request.Class!, request.Crew)
            : Waited.For(OfClubAsync(request, errors));
        if (targets is null || errors.Count > 0)
        {
            return InputErrors.Tell(errors, 0, request.Form, terminal, "Nothing was set or shown.");
        }

        Tell(targets, request);
        return ExitStatus.Good;
    }

    private static async Task<RigTargets?> OfClubAsync(TargetsRequest request, List<InputProblem> errors)
    {
        OpenedClub? opened = request.Set.Count == 0
            ? await ClubChoice.OpenAsync(request.Place!, errors, CancellationToken.None).ConfigureAwait(false)
            : await RecordingClub.OpenAsync(new([], null, request.Member!, null, request.Place!), errors, CancellationToken.None).ConfigureAwait(false);
        if (opened is null || errors.Count > 0)
        {
            return null;
        }

        BoatView? boat = request.Boat is { } name ? Find(opened.Club, name, errors) : null;
        if (errors.Count > 0)
        {
            return null;
        }

        string owner = boat is null ? $"crew/{request.Class}/{request.Crew?.Word() ?? "any"}" : $"boat/{boat.Key}";
        IReadOnlyList<ThingSet> set = TargetSetting.Read(request.Set, owner, errors);
        Club club = await RecordedFacts.AppendAsync(opened, set, request.Member ?? string.Empty, "--set", "its keepers set targets", errors).ConfigureAwait(false);
        return boat is null
            ? TargetsView.Of(club, request.Class!, request.Crew)
            : TargetsView.Of(club, boat, request.Crew ?? boat.Crew);
    }

    private static BoatView? Find(Club club, string name, List<InputProblem> errors)
    {
        var titles = new ThingTitles(club, Things.Boat);
        List<BoatView> boats = [.. BoatView.All(club).Where(b => b.Class is not null)];
        BoatView? found = boats.Find(b => titles[b.Key].Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (found is null)
        {
            errors.Add(new("--boat", null, null, name, $"is none of the club's boats whose class is known: {string.Join(", ", boats.Select(b => titles[b.Key]).Order(StringComparer.OrdinalIgnoreCase))}."));
        }

        return found;
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
