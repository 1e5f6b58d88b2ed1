using System.Globalization;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Recording;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.Changing.Kept;

/// <summary>Lists, shows, ticks, closes and drops changes that stand among a club's jobs.</summary>
internal static class KeptRun
{
    private const string NotLooked = "Nothing was looked at.";
    private const string NotRecorded = "Nothing was recorded.";

    public static async Task<Answer> ListAsync(StorePlace place, string? boat, bool all)
    {
        var errors = new List<InputProblem>();
        if (await ClubChoice.OpenAsync(place, errors, CancellationToken.None).ConfigureAwait(false) is not { } club)
        {
            return new Answer.Refused(errors, 0, NotLooked);
        }

        var titles = new ThingTitles(club.Club, Things.Boat);
        if (boat is not null && !club.Club.Subjects.Any(s => s.Thing == Things.Boat && IsNamed(s.Key)))
        {
            return new Answer.Refused([new("--boat", null, null, boat, "is none of the club's boats.")], 0, NotLooked);
        }

        List<RigChange> changes = [.. RigChanges.Of(club.Club).Where(c => (boat is null || IsNamed(c.Boat)) && (all || c.IsOpen(MeasuringSettings.Default)))];
        return new Answer.Done(
            ExitStatus.Good,
            changes.Count == 0 ? [all ? "No change of a rig is on record." : "No change of a rig is open."] : [.. changes.Select(c => KeptTold.Head(club.Club, c))],
            KeptTold.Document(club, club.Club, changes));

        bool IsNamed(string key) => key.Length > 0 && titles[key].Equals(boat!.Trim(), StringComparison.OrdinalIgnoreCase);
    }

    public static async Task<Answer> ShowAsync(StorePlace place, string job)
    {
        var errors = new List<InputProblem>();
        OpenedClub? club = await ClubChoice.OpenAsync(place, errors, CancellationToken.None).ConfigureAwait(false);
        return club is not null && Find(club.Club, job, errors) is { } change
            ? KeptTold.One(club, club.Club, change)
            : new Answer.Refused(errors, 0, NotLooked);
    }

    public static async Task<Answer> DoneAsync(StorePlace place, string job, IReadOnlyList<int> steps, bool undo, string member)
    {
        var errors = new List<InputProblem>();
        (OpenedClub? club, RigChange? change) = await OpenAsync(place, job, member, errors).ConfigureAwait(false);
        if (club is null || change is null)
        {
            return new Answer.Refused(errors, 0, NotRecorded);
        }

        int count = change.Plan.Steps.Count;
        foreach (int step in steps.Where(s => s < 1 || s > count || change.StepsDone.Contains(s - 1) != undo).Distinct())
        {
            errors.Add(new("STEP", null, null, step.ToString(CultureInfo.InvariantCulture), step < 1 || step > count
                ? string.Create(CultureInfo.InvariantCulture, $"is none of its steps: expected 1 to {count}.")
                : undo ? "is not done: there is nothing to take back." : "is done already."));
        }

        List<Fact> facts = undo ? TakenBack(club, change, steps, member, errors) : [];
        Club after = club.Club;
        foreach (int step in undo || errors.Count > 0 ? [] : steps.Distinct())
        {
            // What a step takes from the shelf follows from what those before it left there.
            IReadOnlyList<Fact> done = DoneSteps.Facts(after, change.Plan, step - 1);
            facts.AddRange(done);
            after = RecordedFacts.AsIf(club, after, done, member);
        }

        return await RecordAsync(club, change, facts, member, errors).ConfigureAwait(false);
    }

    public static Task<Answer> CloseAsync(StorePlace place, string job, string member) =>
        EndAsync(place, job, change => new JobDone(change.Key), member);

    public static Task<Answer> DropAsync(StorePlace place, string job, string? reason, string member) =>
        EndAsync(place, job, change => new JobDropped(change.Key, string.IsNullOrWhiteSpace(reason) ? null : reason.Trim()), member);

    private static async Task<Answer> EndAsync(StorePlace place, string job, Func<RigChange, Fact> end, string member)
    {
        var errors = new List<InputProblem>();
        (OpenedClub? club, RigChange? change) = await OpenAsync(place, job, member, errors).ConfigureAwait(false);
        return club is null || change is null
            ? new Answer.Refused(errors, 0, NotRecorded)
            : await RecordAsync(club, change, [end(change)], member, errors).ConfigureAwait(false);
    }

    private static async Task<Answer> RecordAsync(OpenedClub club, RigChange change, IReadOnlyList<Fact> facts, string member, List<InputProblem> errors)
    {
        Club after = errors.Count > 0
            ? club.Club
            : await RecordedFacts.AppendAsync(club, facts, member, "JOB", KeptCommands.WhoMay, errors).ConfigureAwait(false);
        return errors.Count > 0
            ? new Answer.Refused(errors, 0, NotRecorded)
            : KeptTold.One(club, after, RigChanges.Find(after, change.Key)!);
    }

    /// <summary>Whoever is no keeper takes back what is their own.</summary>
    private static List<Fact> TakenBack(OpenedClub club, RigChange change, IReadOnlyList<int> steps, string member, List<InputProblem> errors)
    {
        List<Journal.Replay.Recorded> records = [.. steps.Distinct().SelectMany(s => DoneSteps.Records(club.Club, change, s - 1))];
        if (RecordedFacts.RoleOf(club, member) is { } role && role != Role.Keeper && records.Find(r => r.Entry.Member != member) is { } other)
        {
            errors.Add(new("--member", null, null, member, $"did not tick that, but {other.Entry.Member}: they or a keeper of the club take it back."));
        }

        return [.. records.Select(r => new Retracted(r.Entry.Id))];
    }

    private static async Task<(OpenedClub? Club, RigChange? Change)> OpenAsync(StorePlace place, string job, string member, List<InputProblem> errors)
    {
        OpenedClub? club = await RecordingClub.OpenAsync(new([], null, member, null, place), errors, CancellationToken.None).ConfigureAwait(false);
        if (club is null || errors.Count > 0 || Find(club.Club, job, errors) is not { } change)
        {
            return default;
        }

        if (change.Ended is { } ended)
        {
            errors.Add(new("JOB", null, null, job, $"was {(ended.Fact is JobDropped ? "dropped" : "closed")} on {Language.English.Day(Day.Of(ended.Entry))}."));
            return default;
        }

        return (club, change);
    }

    private static RigChange? Find(Club club, string job, List<InputProblem> errors)
    {
        RigChange? found = RigChanges.Find(club, job);
        if (found is null)
        {
            List<string> open = [.. RigChanges.Of(club).Where(c => c.IsOpen(MeasuringSettings.Default)).Select(c => c.Key)];
            errors.Add(new("JOB", null, null, job, $"is no change of this club: {(open.Count == 0 ? "none is open" : $"those open are {string.Join(", ", open)}")}."));
        }

        return found;
    }
}
