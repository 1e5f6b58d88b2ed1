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
    private static long _since = Stopwatch.GetTimestamp();

    /// <summary>Pauses, where it is time to.</summary>
    public static async ValueTask TakeAsync()
    {
        if (Stopwatch.GetElapsedTime(_since) >= Longest)
        {
            await Task.Delay(1);
            _since = Stopwatch.GetTimestamp();
        }
    }
}
