using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Store;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>Puts facts on a club's record, as a device would: all of them or none.</summary>
internal static class RecordedFacts
{
    private const string Device = "terminal";

    /// <returns>The club with them; as it was where there was an error.</returns>
    /// <param name="club">The club.</param>
    /// <param name="facts">What to record.</param>
    /// <param name="member">Who records it.</param>
    /// <param name="option">What the facts came from, for messages.</param>
    /// <param name="whoMay">Who may record them, for whoever may not: "its keepers set targets".</param>
    /// <param name="errors">Where errors go.</param>
    public static async Task<Club> AppendAsync(
        OpenedClub club, IReadOnlyList<Fact> facts, string member, string option, string whoMay, List<InputProblem> errors)
    {
        List<Entry> entries = Entries(club, club.Club, facts, member);
        errors.AddRange(entries.SelectMany(EntryRules.Problems).Distinct().Select(p => new InputProblem(option, null, null, null, p)));
        if (RoleOf(club, member) is { } role && facts.Any(f => !RecordingRules.May(role, f)))
        {
            errors.Add(new("--member", null, null, member, $"is a {role.Word()} of the club: {whoMay}."));
        }

        if (errors.Count > 0 || entries.Count == 0)
        {
            return club.Club;
        }

        await new JournalStore(club.Location).AppendAsync(club.Id, entries, CancellationToken.None).ConfigureAwait(false);
        return club.Club.With(entries.Select(Journal.Replay.Recorded.Of));
    }

    /// <summary>A club as it would be with facts that are not on record yet.</summary>
    public static Club AsIf(OpenedClub club, Club before, IReadOnlyList<Fact> facts, string member) =>
        before.With(Entries(club, before, facts, member).Select(Journal.Replay.Recorded.Of));

    /// <summary>A member's role; null in a club that has no members, where anybody may record.</summary>
    public static Role? RoleOf(OpenedClub club, string member) =>
        club.Kept.Members.FirstOrDefault(m => m.Member == member) is { } known ? Roles.Of(known.Role) : null;

    private static List<Entry> Entries(OpenedClub club, Club before, IReadOnlyList<Fact> facts, string member)
    {
        DateTimeOffset now = DateTimeOffset.UtcNow;
        HybridClock clock = new HybridClock().Seen(before.Last);
        var entries = new List<Entry>();
        foreach (Fact fact in facts)
        {
            (HybridTime time, clock) = clock.Tick(now);
            (string kind, int version, byte[] body) = FactKinds.Write(fact);
            entries.Add(new()
            {
                Id = Guid.CreateVersion7(now), Club = club.Id, Member = member, Device = Device, Time = time, Kind = kind, Version = version, Body = body,
            });
        }

        return entries;
    }
}
