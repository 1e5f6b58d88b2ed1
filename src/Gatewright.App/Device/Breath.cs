using System.Diagnostics;

namespace Gatewright.App.Device;

/// <summary>
/// Lets the browser draw and hear touches in the middle of long work: a page has one thread, and what runs on it without a
/// pause holds up everybody.
/// </summary>
public sealed class Breath
{
    // Shorter than a frame of the screen by the program's own clock; on a phone some frames long.
    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(10);

    /// <summary>So long after a tap the next may come: the gauge is carried to the next gate, set and read, and the tap after that is not held up by what can wait.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(30);

    // What was tapped last is on the screen before anything goes on.
    private static readonly TimeSpan Painted = TimeSpan.FromMilliseconds(100);
    private long _drawn = Stopwatch.GetTimestamp();
    private long? _held;
    private TaskCompletionSource _letGo = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>How often it was held: who goes on with something until then can tell.</summary>
    public int Holds { get; private set; }

    /// <summary>Somebody is about to tap something in, or has: what goes on in the background waits until they are done.</summary>
    public void Hold()
    {
        _held = Stopwatch.GetTimestamp();
        Holds++;
    }

    /// <summary>Nobody taps any more: what goes on in the background is what they look at now.</summary>
    public void LetGo()
    {
        _held = null;
        _letGo.SetResult();
        _letGo = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }

    /// <summary>Pauses, where it is time to, and for as long as somebody taps.</summary>
    public async ValueTask TakeAsync()
    {
        while (_held is { } held && Quiet - Stopwatch.GetElapsedTime(held) is { Ticks: > 0 } left)
        {
            await Task.WhenAny(_letGo.Task, Task.Delay(left));
            await Task.Delay(Painted);
        }

        if (Stopwatch.GetElapsedTime(_drawn) >= Longest)
        {
            await Task.Delay(1);
            _drawn = Stopwatch.GetTimestamp();
        }
    }
}
