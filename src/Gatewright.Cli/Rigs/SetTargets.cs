using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Store;

namespace Gatewright.Cli.Rigs;

/// <summary>Puts targets on a club's record, as a device would: all of them or none.</summary>
internal static class SetTargets
{
    private const string Device = "terminal";

    /// <returns>The club with them; as it was where there was an error.</returns>
    public static async Task<Club> AppendAsync(OpenedClub club, IReadOnlyList<ThingSet> targets, string? member, List<InputProblem> errors)
    {
        DateTimeOffset now = DateTimeOffset.UtcNow;
        HybridClock clock = new HybridClock().Seen(club.Club.Last);
        var entries = new List<Entry>();
        foreach (ThingSet target in targets)
        {
            (HybridTime time, clock) = clock.Tick(now);
            (string kind, int version, byte[] body) = FactKinds.Write(target);
            entries.Add(new()
            {
                Id = Guid.CreateVersion7(now), Club = club.Id, Member = member!, Device = Device, Time = time, Kind = kind, Version = version, Body = body,
            });
        }

        errors.AddRange(entries.SelectMany(EntryRules.Problems).Distinct().Select(p => new InputProblem("--set", null, null, null, p)));
        if (club.Kept.Members.FirstOrDefault(m => m.Member == member) is { } known && Roles.Of(known.Role) is { } role && targets.Any(t => !RecordingRules.May(role, t)))
        {
            errors.Add(new("--member", null, null, member, $"is a {role.Word()} of the club: its keepers set targets."));
        }

        if (errors.Count > 0 || entries.Count == 0)
        {
            return club.Club;
        }

        await new JournalStore(club.Location).AppendAsync(club.Id, entries, CancellationToken.None).ConfigureAwait(false);
        return club.Club.With(entries.Select(Recorded.Of));
    }
}
