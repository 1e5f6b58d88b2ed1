using System.Collections.Immutable;

namespace Gatewright.Journal.Replay;

/// <summary>Follows retractions of retractions, however long their chain: no call within a call.</summary>
internal static class RetractionSearch
{
    public static bool IsRetracted(
        Recorded asked, ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> retractions)
    {
        // All that bears on the question, and then its answers from the latest back: what is later never rests on
        // what is earlier.
        var relevant = new SortedSet<Recorded>(RecordedOrder.Instance) { asked };
        var open = new Stack<Recorded>([asked]);
        while (open.TryPop(out Recorded? next))
        {
            foreach (Recorded retraction in Later(next, retractions))
            {
                if (relevant.Add(retraction))
                {
                    open.Push(retraction);
                }
            }
        }

        var retracted = new HashSet<Guid>();
        foreach (Recorded record in relevant.Reverse())
        {
            if (Later(record, retractions).Any(r => !retracted.Contains(r.Entry.Id)))
            {
                retracted.Add(record.Entry.Id);
            }
        }

        return retracted.Contains(asked.Entry.Id);
    }

    private static IEnumerable<Recorded> Later(
        Recorded record, ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> retractions) =>
        retractions.TryGetValue(record.Entry.Id, out ImmutableSortedSet<Recorded>? all)
            ? all.Where(r => RecordedOrder.Instance.Compare(r, record) > 0)
            : [];
}
