using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Server.Members;

namespace Gatewright.Server.Syncing;

/// <summary>Decides which entries of a member a club's journal takes.</summary>
/// <param name="access">Who sends them.</param>
/// <param name="club">The club as it is.</param>
/// <param name="now">The server's clock.</param>
internal sealed class Admission(ClubAccess access, Club club, DateTimeOffset now)
{
    /// <summary>How far a device's clock may be ahead: five minutes.</summary>
    public static readonly TimeSpan Ahead = TimeSpan.FromMinutes(5);

    private readonly Dictionary<Guid, string> _makers = [];

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

        IReadOnlyList<string> problems = EntryRules.Problems(entry);
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
            _makers[entry.Id] = entry.Member;
        }

        return refusal;
    }

    private (string Code, IReadOnlyList<string> Reasons)? OfRole(Entry entry, Fact fact)
    {
        if (fact is Retracted retracted && access.Role != Role.Keeper)
        {
            string? maker = _makers.GetValueOrDefault(retracted.Entry) ?? club.Find(retracted.Entry)?.Entry.Member;
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
