namespace Gatewright.Journal.Entries;

/// <summary>A device's hybrid logical clock. Immutable: each use gives the clock that follows.</summary>
/// <param name="Last">The greatest time given out or seen.</param>
public readonly record struct HybridClock(HybridTime Last)
{
    /// <summary>The time for a new entry, greater than any given out or seen, and the clock after it.</summary>
    /// <param name="now">What the wall clock says; it may have gone back.</param>
    public (HybridTime Time, HybridClock After) Tick(DateTimeOffset now)
    {
        long wall = now.ToUnixTimeMilliseconds();
        HybridTime time = wall > Last.Milliseconds
            ? new(wall, 0)
            : Last.Counter < int.MaxValue ? new(Last.Milliseconds, Last.Counter + 1)
            : new(Last.Milliseconds + 1, 0);
        return (time, new(time));
    }

    /// <summary>The clock after an entry of another device was seen.</summary>
    public HybridClock Seen(HybridTime time) => time > Last ? new(time) : this;
}
