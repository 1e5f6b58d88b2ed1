using System.Globalization;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Recording;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Replay;
using Gatewright.Words;

namespace Gatewright.Cli.Changing.Kept;

/// <summary>Plans a change and puts it on record.</summary>
internal static class KeepRun
{
    private const string So = "Nothing was planned.";

    public static async Task<Answer> RunAsync(Terminal terminal, StorePlace place, string? boat, Wanted wanted, string member, Wording say)
    {
        var errors = new List<InputProblem>();
        OpenedClub? club = await RecordingClub.OpenAsync(new([], null, member, null, place), errors, CancellationToken.None).ConfigureAwait(false);
        if (club is null || errors.Count > 0)
        {
            return new Answer.Refused(errors, 0, So);
        }

        var rigs = KnownRigs.Of(new("gatewright change keep", [], boat, place, Form.Plain, null), terminal);
        if (ChangeRun.Plan(rigs, boat, wanted) is not { } plan)
        {
            return new Answer.Refused(rigs.Errors, 0, So);
        }

        if (plan.Steps.Count == 0)
        {
            return new Answer.Done(
                ExitStatus.Good,
                [Wording.English.Changes.Head(plan), "Nothing is to be done, and nothing was put on record.", .. Wording.English.Changes.Unclear(plan)],
                KeptTold.Document(club, club.Club, []));
        }

        string key = FreeKey(club.Club, plan.Rig.Name);
        Club after = await RecordedFacts.AppendAsync(
            club,
            [ChangeToKeep.Of(key, club.Club, rigs.KeyOf(plan.Rig.Name)!, plan, say)],
            member,
            "--to",
            KeptCommands.WhoMay,
            errors).ConfigureAwait(false);
        return errors.Count > 0
            ? new Answer.Refused(errors, 0, So)
            : KeptTold.One(club, after, RigChanges.Find(after, key)!, $"Planned as {key}: tick its steps with gatewright change done {key} STEP.");
    }

    /// <summary>The boat and the day, which somebody can type; a number where that is taken.</summary>
    private static string FreeKey(Club club, string boat)
    {
        string name = string.Concat(boat.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
        string key = $"{(name.Length > 0 ? name : "boat")}-{DateTimeOffset.UtcNow.ToString("yyyyMMdd", CultureInfo.InvariantCulture)}";
        HashSet<string> taken = [.. RigChanges.Of(club).Select(c => c.Key)];
        for (int number = 1; ; number++)
        {
            string free = number == 1 ? key : $"{key}-{number.ToString(CultureInfo.InvariantCulture)}";
            if (!taken.Contains(free) && !club.About(new("job", free)).Any())
            {
                return free;
            }
        }
    }
}
