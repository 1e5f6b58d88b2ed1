using Gatewright.Journal.Entries;

namespace Gatewright.Replica.Copies;

/// <summary>
/// Gives unsent entries the times they would have had by a clock that was right. One that the server has after all, since
/// its answer was lost, stays there as it was sent: the two are known to be the same when it comes back.
/// </summary>
internal static class Restamping
{
    /// <summary>Moves entries, each never before what had been seen when it was made, and none before the one it followed.</summary>
    /// <param name="unsent">All unsent entries.</param>
    /// <param name="moves">Which of them are to be moved.</param>
    /// <param name="now">What the device's clock says.</param>
    /// <param name="right">What the server's says.</param>
    /// <param name="made">The greatest time of any entry that this device made before them.</param>
    /// <returns>Those that changed.</returns>
    public static IReadOnlyList<OwnEntry> Moved(
        IReadOnlyList<OwnEntry> unsent, Func<OwnEntry, bool> moves, DateTimeOffset now, DateTimeOffset right, HybridTime made)
    {
        OwnEntry[] ordered = [.. unsent.OrderBy(o => o.Entry, EntryOrder.Instance)];
        if (ordered.LastOrDefault(moves) is not { } last)
        {
            return [];
        }

        // A clock that was ahead and has gone right by itself leaves entries of later than now: the last of them was made
        // now at the latest.
        TimeSpan offset = right - (last.Entry.Time.Instant > now ? last.Entry.Time.Instant : now);
        var changed = new List<OwnEntry>();
        HybridTime before = made;
        foreach (OwnEntry own in ordered)
        {
            // What was seen was not of later than now, unless by a clock that was wrong as well.
            before = own.Seen > before && own.Seen.Instant <= right + DeviceClock.Allowed ? own.Seen : before;
            if (moves(own) || own.Entry.Time <= before)
            {
                TimeSpan by = moves(own) ? offset : TimeSpan.Zero;
                changed.Add(own with { Entry = ClockRepair.Restamp([own.Entry], by, before).Entries[0], IsTimeRight = true });
                before = changed[^1].Entry.Time;
            }
            else
            {
                before = own.Entry.Time;
            }
        }

        return changed;
    }
}
