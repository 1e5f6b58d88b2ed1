namespace Gatewright.Journal.Entries;

/// <summary>
/// When an entry was made, as a hybrid logical clock tells it: a wall clock's milliseconds, and a counter for what
/// the wall clock cannot tell apart or has gone back on.
/// </summary>
/// <remarks>
/// After Kulkarni and others, "Logical Physical Clocks" (2014): an entry made after another was seen always has the
/// greater time, even where the maker's clock is behind.
/// </remarks>
/// <param name="Milliseconds">Since 1970-01-01T00:00Z.</param>
/// <param name="Counter">0 or more.</param>
public readonly record struct HybridTime(long Milliseconds, int Counter) : IComparable<HybridTime>
{
    /// <summary>The wall clock's part, as an instant.</summary>
    public DateTimeOffset Instant => DateTimeOffset.FromUnixTimeMilliseconds(Milliseconds);

    /// <inheritdoc/>
    public int CompareTo(HybridTime other) => Milliseconds != other.Milliseconds
        ? Milliseconds.CompareTo(other.Milliseconds)
        : Counter.CompareTo(other.Counter);

    /// <summary>Whether one time is before another.</summary>
    public static bool operator <(HybridTime left, HybridTime right) => left.CompareTo(right) < 0;

    /// <summary>Whether one time is after another.</summary>
    public static bool operator >(HybridTime left, HybridTime right) => left.CompareTo(right) > 0;

    /// <summary>Whether one time is not after another.</summary>
    public static bool operator <=(HybridTime left, HybridTime right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one time is not before another.</summary>
    public static bool operator >=(HybridTime left, HybridTime right) => left.CompareTo(right) >= 0;
}
