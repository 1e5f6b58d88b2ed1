namespace Gatewright.Journal.Entries;

/// <summary>Puts the times of entries right that were made while a device's clock was wrong, as long as nobody has them yet.</summary>
public static class ClockRepair
{
    /// <summary>
    /// The entries as if the clock had been right: each moved by the offset, but never before what had been seen when the
    /// first was made, and none before the one it followed. Ids, and all else, stay.
    /// </summary>
    /// <param name="unsent">The entries in the order in which they were made. Whoever has sent one must leave it as it is.</param>
    /// <param name="offset">The right time less what the clock said; −1 h for a clock that was an hour ahead.</param>
    /// <param name="seen">The greatest time of any entry that the device had made or seen before the first of these.</param>
    /// <returns>The entries in the same order, and the clock after them.</returns>
    /// <exception cref="ArgumentException">The entries are not in the order of their times.</exception>
    public static (IReadOnlyList<Entry> Entries, HybridClock After) Restamp(IReadOnlyList<Entry> unsent, TimeSpan offset, HybridTime seen)
    {
        ArgumentNullException.ThrowIfNull(unsent);
        var clock = new HybridClock(seen);
        var restamped = new List<Entry>(unsent.Count);
        HybridTime? before = null;
        foreach (Entry entry in unsent)
        {
            if (entry.Time <= before)
            {
                throw new ArgumentException($"Entry {entry.Id} is not later than the one before it: give them in the order in which they were made.", nameof(unsent));
            }

            before = entry.Time;
            (HybridTime time, clock) = clock.Tick(Moved(entry.Time.Milliseconds, offset));
            restamped.Add(At(entry, time));
        }

        return (restamped, clock);
    }

    /// <summary>A time that an entry can have, however far a clock was off.</summary>
    private static DateTimeOffset Moved(long milliseconds, TimeSpan offset) => DateTimeOffset.FromUnixTimeMilliseconds(
        Math.Clamp(milliseconds + (long)offset.TotalMilliseconds, 0, EntryLimits.LatestMilliseconds));

    private static Entry At(Entry entry, HybridTime time) => new()
    {
        Id = entry.Id,
        Club = entry.Club,
        Member = entry.Member,
        Device = entry.Device,
        Time = time,
        Kind = entry.Kind,
        Version = entry.Version,
        Body = entry.Body,
    };
}
