using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Standing;

/// <summary>Gates that were read, then changed, and not read since: the boat's verdict says nothing of them.</summary>
/// <param name="Changes">Which, from the bow, and what was last done to each.</param>
/// <param name="KeepAshore">
/// Whether what was read of them before kept the boat ashore. That something was done to a gate does not end that: a reading does.
/// </param>
public sealed record ChangedUnread(IReadOnlyList<GateChange> Changes, bool KeepAshore)
{
    /// <summary>No gate is so.</summary>
    public static ChangedUnread None { get; } = new([], false);

    /// <summary>Which, from the bow.</summary>
    public IReadOnlyList<GatePlace> Gates { get; } = [.. Changes.Select(c => c.Gate)];

    /// <summary>
    /// The gates that a boat has as far as its readings tell: of those read before they were changed, all but one of a sweep seat
    /// that was read on the other side since.
    /// </summary>
    public static IReadOnlyCollection<GatePlace> GatesOf(BoatRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        HashSet<GatePlace> now = [.. record.Current.Readings.Where(IsOfAGate).Select(r => r.Gate)];
        return [.. record.Old.Select(r => r.Gate).Distinct()
            .Where(g => record.Current.Class.Rowing == Rowing.Scull || !now.Any(n => n.Seat == g.Seat && n.Side != g.Side))];
    }

    /// <summary>Those of a boat.</summary>
    /// <param name="record">Its record; null where its class is not known.</param>
    /// <param name="gates">The gates that it has now: what was read where none is any more keeps nobody ashore.</param>
    /// <param name="settings">What it is judged by.</param>
    public static ChangedUnread Of(BoatRecord? record, IReadOnlyCollection<GatePlace> gates, CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(gates);
        ArgumentNullException.ThrowIfNull(settings);
        if (record is null || record.Old.Count == 0)
        {
            return None;
        }

        HashSet<GatePlace> unread = [.. gates.Except(record.Current.Readings.Where(IsOfAGate).Select(r => r.Gate))];
        List<Reading> before = [.. record.Old.Where(r => IsOfAGate(r) && unread.Contains(r.Gate))];
        if (before.Count == 0)
        {
            return None;
        }

        MeasuringSettings measuring = settings.Diagnosing.Measuring;
        ReadingsNow now = (record.Current with { Readings = before }).Now(settings.DaysCombined, measuring);
        BoatVerdict then = new Judge(settings.Standard, settings.Rule, measuring)
            .Boat(now.Readings, CorrectedReadings.Of(now.Readings.Readings, measuring), new NothingFeared(), now.Changes);
        HashSet<GatePlace> which = [.. before.Select(r => r.Gate)];
        return new([.. record.Changes.Where(c => which.Contains(c.Gate)).OrderBy(c => c.Gate)], then.StaysAshore);
    }

    private static bool IsOfAGate(Reading reading) => reading.Item != ReadItem.Sleeve;
}
