namespace Gatewright.Server.Tests.Hosting;

/// <summary>The machine's clock, moved on by as much as a test says.</summary>
internal sealed class SetClock : TimeProvider
{
    private readonly bool _ticks;

    /// <param name="ticks">Whether its timers go off: without, whatever happens happens for another reason.</param>
    public SetClock(bool ticks = true) => _ticks = ticks;

    public TimeSpan Ahead { get; set; }

    public override DateTimeOffset GetUtcNow() => System.GetUtcNow() + Ahead;

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) => _ticks
        ? base.CreateTimer(callback, state, dueTime, period)
        : base.CreateTimer(callback, state, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
}
