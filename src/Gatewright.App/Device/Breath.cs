using System.Diagnostics;

namespace Gatewright.App.Device;

/// <summary>
/// Lets the browser draw and hear touches in the middle of long work: a page has one thread, and what runs on it without a
/// pause holds up everybody.
/// </summary>
internal static class Breath
{
    // Shorter than a frame of the screen by the program's own clock; on a phone some frames long.
    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(10);

    /// <summary>So long after a tap the next may come: whoever reads a boat gate by gate taps every second or two, and is not held up between the taps by what can wait.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(2);
    private static long _since = Stopwatch.GetTimestamp();
    private static long? _tapped;

    /// <summary>Somebody has tapped something in: what goes on in the background waits until they pause.</summary>
    public static void Hold() => _tapped = Stopwatch.GetTimestamp();

    /// <summary>Nobody taps any more: what goes on in the background is what they look at now.</summary>
    public static void LetGo() => _tapped = null;

    /// <summary>Whether somebody has tapped just now.</summary>
    public static bool IsHeld => _tapped is { } tapped && Stopwatch.GetElapsedTime(tapped) < Quiet;

    /// <summary>Pauses, where it is time to, and for as long as somebody taps.</summary>
    public static async ValueTask TakeAsync()
    {
        while (_tapped is { } tapped && Quiet - Stopwatch.GetElapsedTime(tapped) is { Ticks: > 0 } left)
        {
            await Task.Delay(left);
        }

        if (Stopwatch.GetElapsedTime(_since) >= Longest)
        {
            await Task.Delay(1);
            _since = Stopwatch.GetTimestamp();
        }
    }
}
