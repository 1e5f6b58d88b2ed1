using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;

namespace Gatewright.Replica.Exchanging;

/// <summary>What is to be done after a batch was answered.</summary>
/// <param name="Settled">Entries whose fate is known: taken, or refused for good.</param>
/// <param name="Conflicts">Ids that the journal has otherwise.</param>
/// <param name="IsClockAhead">Whether some are ahead of the server's clock.</param>
/// <param name="IsOtherMember">Whether some are in the name of somebody who is not signed in after all.</param>
/// <param name="Early">Retractions of what the journal does not have yet, and this device has.</param>
internal sealed record PushOutcome(
    IReadOnlyList<OwnEntry> Settled, IReadOnlySet<Guid> Conflicts, bool IsClockAhead, bool IsOtherMember, IReadOnlyList<OwnEntry> Early)
{
    /// <summary>Reads an answer.</summary>
    public static PushOutcome Of(PushBatch batch, PushAnswer answer, IReadOnlySet<Guid> unsent)
    {
        var settled = new Dictionary<Guid, OwnEntry>();
        var byId = batch.Entries.ToDictionary(o => o.Entry.Id);
        foreach (TakenEntry taken in answer.Taken)
        {
            if (byId.TryGetValue(taken.Id, out OwnEntry? own))
            {
                settled[taken.Id] = own with { State = OwnState.Sent, Number = taken.Number };
            }
        }

        var conflicts = new HashSet<Guid>();
        var early = new List<OwnEntry>();
        bool isClockAhead = false;
        bool isOtherMember = false;
        foreach (RefusedEntry refused in answer.Refused.Where(r => r.Line > 0 && r.Line <= batch.Entries.Count))
        {
            OwnEntry own = batch.Entries[refused.Line - 1];
            switch (refused.Code)
            {
                case RefusalCode.ClockAhead:
                    isClockAhead = true;
                    break;
                case RefusalCode.OtherMember:
                    isOtherMember = true;
                    break;
                case RefusalCode.Conflict:
                    conflicts.Add(own.Entry.Id);
                    break;
                case RefusalCode.NotYet when Target(own.Entry) is { } target && unsent.Contains(target):
                    early.Add(Refused(own, refused.Code, refused.Reasons));
                    break;
                default:
                    settled[own.Entry.Id] = Refused(own, refused.Code, refused.Reasons);
                    break;
            }
        }

        return new([.. settled.Values], conflicts, isClockAhead, isOtherMember, early);
    }

    /// <summary>An entry that the server does not take.</summary>
    public static OwnEntry Refused(OwnEntry own, string code, IReadOnlyList<string> reasons) =>
        own with { State = OwnState.Refused, Code = code, Reasons = reasons };

    private static Guid? Target(Entry entry) => (FactKinds.Read(entry, out _) as Retracted)?.Entry;
}
