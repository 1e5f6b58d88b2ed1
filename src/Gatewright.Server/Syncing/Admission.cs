using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Server.Members;
using Gatewright.Store;

namespace Gatewright.Server.Syncing;

/// <summary>Decides which entries of a member a club's journal takes.</summary>
/// <param name="access">Who sends them.</param>
/// <param name="club">The club as it is.</param>
/// <param name="now">The server's clock.</param>
internal sealed class Admission(ClubAccess access, Club club, DateTimeOffset now)
{
    /// <summary>How far a device's clock may be ahead: five minutes.</summary>
    public static readonly TimeSpan Ahead = TimeSpan.FromMinutes(5);

    /// <summary>
    /// The highest counter of a time: a million. A clock counts what its milliseconds cannot tell apart; one that is
    /// near the end of its numbers would leave no time for whatever is recorded after it.
    /// </summary>
    public const int HighestCounter = 1_000_000;

    private readonly Dictionary<Guid, Entry> _taken = [];

    /// <summary>Why an entry is not taken; null when it is.</summary>
    /// <param name="entry">An entry whose envelope could be read.</param>
    public (string Code, IReadOnlyList<string> Reasons)? Refusal(Entry entry)
    {
        if (entry.Club != access.Club)
        {
            return (RefusalCode.OtherClub, [$"\"club\" is \"{entry.Club}\": only entries of \"{access.Club}\" are taken here"]);
        }

        if (entry.Member != access.Member)
        {
            return (RefusalCode.OtherMember, [$"\"member\" is \"{entry.Member}\": only your own entries are taken, those of \"{access.Member}\""]);
        }

        // What is there already is not judged again: its sender may have another role by now, or another clock.
        if ((club.Find(entry.Id)?.Entry ?? _taken.GetValueOrDefault(entry.Id)) is { } known)
        {
            return IsSame(known, entry) ? null : (RefusalCode.Conflict, [new EntryConflictException(entry.Id).Message]);
        }

        IReadOnlyList<string> problems = EntryRules.Problems(entry);
        if (entry.Time.Counter > HighestCounter)
        {
            problems = [.. problems, $"\"n\" is {entry.Time.Counter}: at most {HighestCounter} is taken"];
        }

        if (ServerEntries.IsOwn(entry.Device))
        {
            problems = [.. problems, $"\"device\" is \"{entry.Device}\": that is the server itself; give the device a name of its own"];
        }

        if (problems.Count > 0)
        {
            return (RefusalCode.Malformed, problems);
        }

        if (entry.Time.Instant > now + Ahead)
        {
            return (RefusalCode.ClockAhead,
                [$"\"ms\" is {entry.Time.Milliseconds}, and it is {now.ToUnixTimeMilliseconds()} here: put the device's clock right and send the entry with the time it then has"]);
        }

        (string Code, IReadOnlyList<string> Reasons)? refusal = OfRole(entry, FactKinds.Read(entry, out _)!);
        if (refusal is null)
        {
            _taken[entry.Id] = entry;
        }

        return refusal;
    }

    /// <summary>Whether two entries under one id are the same.</summary>
    public static bool IsSame(Entry one, Entry other) =>
        one.Member == other.Member
        && one.Device == other.Device
        && one.Time == other.Time
        && one.Kind == other.Kind
        && one.Version == other.Version
        && one.Body.Span.SequenceEqual(other.Body.Span);

    private (string Code, IReadOnlyList<string> Reasons)? OfRole(Entry entry, Fact fact)
    {
        if (fact is Retracted retracted && access.Role != Role.Keeper)
        {
            string? maker = (_taken.GetValueOrDefault(retracted.Entry) ?? club.Find(retracted.Entry)?.Entry)?.Member;
            return maker is null
                ? (RefusalCode.NotYet, [$"it retracts {retracted.Entry}, which is not in the journal: send that first"])
                : maker == access.Member ? null
                : (RefusalCode.NotAllowed, ["only a keeper retracts what another recorded"]);
        }

        return RecordingRules.May(access.Role, fact)
            ? null
            : (RefusalCode.NotAllowed, [$"a {access.Role.Word()} does not record \"{entry.Kind}\"{RecordingRules.Detail(fact)}: ask a keeper"]);
    }
}
