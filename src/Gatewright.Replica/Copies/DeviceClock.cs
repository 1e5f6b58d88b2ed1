namespace Gatewright.Replica.Copies;

/// <summary>A device's clock, put right by the server's once the two have been compared. What was learned is forgotten with the page.</summary>
/// <param name="wall">The device's own.</param>
public sealed class DeviceClock(TimeProvider wall)
{
    /// <summary>How far off a clock may be before entries are moved for it: what the server allows one to be ahead, five minutes.</summary>
    internal static readonly TimeSpan Allowed = TimeSpan.FromMinutes(5);

    // An answer takes some time to come: what is smaller may be that.
    private static readonly TimeSpan Noticeable = TimeSpan.FromMinutes(1);

    /// <summary>What to add to the device's own clock.</summary>
    public TimeSpan Offset { get; private set; }

    /// <summary>Whether it has been compared.</summary>
    public bool IsCompared { get; private set; }

    /// <summary>The time, as well as it is known.</summary>
    public DateTimeOffset Now => wall.GetUtcNow() + Offset;

    /// <summary>Its source, for waits.</summary>
    internal TimeProvider Wall => wall;

    /// <summary>Whether it is off by more than is allowed, one way or the other.</summary>
    internal bool IsWrong(DateTimeOffset right) => (right - Now).Duration() > Allowed;

    /// <summary>Puts it right.</summary>
    internal void Compare(DateTimeOffset right)
    {
        TimeSpan off = right - wall.GetUtcNow();
        Offset = off.Duration() > Noticeable ? off : TimeSpan.Zero;
        IsCompared = true;
    }
}
