using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Changing.Kept;

/// <summary>What is said of changes that stand among a club's jobs.</summary>
internal static class KeptTold
{
    private static readonly MeasuringSettings Settings = MeasuringSettings.Default;

    /// <summary>One change, in full.</summary>
    public static Answer One(OpenedClub opened, Club club, RigChange change, string? first = null) => new Answer.Done(
        ExitStatus.Good, [.. first is null ? [] : new[] { first }, Head(club, change), .. Lines(change)], Document(opened, club, [change]));

    /// <summary>"Heron to Regatta: 2 of 5 steps done, 3 to read again; open, planned by kim on 2026-11-25, its key heron-20261125."</summary>
    public static string Head(Club club, RigChange change)
    {
        int left = change.Again(Settings).Count(a => a.State != ReadAgainState.Done);
        string reading = left == 0 ? string.Empty : FormattableString.Invariant($", {left} to read again");
        return FormattableString.Invariant($"{BoatOf(club, change)} to {change.Plan.Rig}: {change.StepsDone.Count} of {change.Plan.Steps.Count} steps done{reading}; {State(change)}{On(change)}, planned by {change.Planned.Entry.Member} on {Language.English.Day(Day.Of(change.Planned.Entry))}, its key {change.Key}.");
    }

    /// <summary>For programs.</summary>
    public static KeptChangesDocument Document(OpenedClub opened, Club club, IReadOnlyList<RigChange> changes) => new(opened.Id, opened.Name, [.. changes.Select(c => new KeptChange(
        c.Key,
        BoatOf(club, c),
        c.Plan.Rig,
        c.Planned.Entry.Member,
        Day.Of(c.Planned.Entry),
        State(c),
        c.ClosedOn(Settings),
        (c.Ended?.Fact as JobDropped)?.Reason,
        [.. c.Plan.Steps.Select((step, i) => new KeptStep(i + 1, step.In(Language.English), c.StepsDone.Contains(i)))],
        [.. c.PartsWanted.Select(Part)],
        [.. c.Again(Settings).Select(Reading)]))]);

    private static IEnumerable<string> Lines(RigChange change)
    {
        foreach ((PlannedStep step, int i) in change.Plan.Steps.Select((s, i) => (s, i)))
        {
            yield return FormattableString.Invariant($"{i + 1}. {(change.StepsDone.Contains(i) ? "Done" : "To do")}: {step.In(Language.English)}");
        }

        if ((change.Ended?.Fact as JobDropped)?.Reason is { } reason)
        {
            yield return $"Dropped: {reason.TrimEnd('.')}.";
        }

        foreach (JobPart part in change.Parts)
        {
            yield return FormattableString.Invariant($"Needs {Part(part.Used)}; {(part.ShortBy > 0 ? $"short by {part.ShortBy}, " : string.Empty)}{part.OnShelf} on the shelf.");
        }

        foreach (ReadAgain again in change.Again(Settings))
        {
            yield return $"To read again, {Place(again)}: {Found(again)}.";
        }

        foreach (string caution in English.Cautions.Each(change.Cautions))
        {
            yield return caution;
        }
    }

    private static string Part(PartUsed part) => FormattableString.Invariant($"{part.Count} × {part.Part} {part.Size:0.##}");

    private static string Place(ReadAgain again) => RigItems.OfWord(again.At.Item) is { } item
        ? $"{English.Rig.Place(new(again.At.Seat, again.At.Side))}, {English.Changes.Item(item)}"
        : again.At.Item;

    private static string Found(ReadAgain again)
    {
        if (again is not { Read: { } read, Day: { } day } || RigItems.OfWord(again.At.Item) is not { } item)
        {
            return again.State == ReadAgainState.Waiting ? "after its steps are done" : "not read yet";
        }

        string figure = $"read {English.Changes.Figure(item, read)} on {Language.English.Day(day)}";
        return again.State == ReadAgainState.Outside && again.At is { From: { } from, To: { } to }
            ? $"{figure}, which is not {English.Changes.Figure(item, (double)from)} to {English.Changes.Figure(item, (double)to)}"
            : figure;
    }

    private static KeptReading Reading(ReadAgain again) => new(
        again.At.Item,
        again.At.Seat,
        again.At.Side?.Word(),
        again.State.ToString().ToLowerInvariant(),
        again.At.From,
        again.At.To,
        again.Read is { } read ? Math.Round(read.Value, 2) : null,
        again.Read is { } known ? Math.Round(known.U, 3) : null,
        again.Day);

    private static string State(RigChange change) =>
        change.IsOpen(Settings) ? "open" : change.Ended?.Fact is JobDropped ? "dropped" : "closed";

    private static string On(RigChange change) => change.ClosedOn(Settings) is { } day ? $" on {Language.English.Day(day)}" : string.Empty;

    private static string BoatOf(Club club, RigChange change) => new ThingTitles(club, Things.Boat)[change.Boat];
}
