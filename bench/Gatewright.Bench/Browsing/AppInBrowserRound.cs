using System.Globalization;
using Gatewright.Bench.Reporting;
using Gatewright.Bench.Serving;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>A round tapped into the published app in a real browser whose processor is slowed, in a large club.</summary>
internal sealed class AppInBrowserRound : IBench
{
    // As many as an evening's round has: of a hundred, the sixth slowest tells of the moment as much as of the program.
    private const int AtLeastTaps = 200;

    public IEnumerable<Measured> Measure()
    {
        var folders = new Folders();
        try
        {
            return MeasureAsync(folders).GetAwaiter().GetResult();
        }
        finally
        {
            folders.Delete();
        }
    }

    private static async Task<IReadOnlyList<Measured>> MeasureAsync(Folders folders)
    {
        RunningServer.Publish();
        using IPlaywright playwright = await Playwright.CreateAsync();
        await using LargeClub club = await LargeClub.MakeAsync(folders);
        string folder = await club.PullAsync(playwright, folders);
        await using Phone phone = await Phone.OpenAsync(playwright, folder);
        await StartTimes.OfAsync(phone, club.App, hasShed: true);
        string load = Machine.Load();
        IReadOnlyList<double> taps = await Taps.OfAsync(phone, AtLeastTaps);
        long heap = await phone.Page.EvaluateAsync<long>("() => Blazor.runtime.Module.HEAPU8.length");
        return
        [
            new(Target.AtMost(100, "ms", "95 of 100 taps to their verdict painted within"), taps[taps.Count * 95 / 100], string.Create(
                CultureInfo.InvariantCulture,
                $"{taps.Count} taps, 60 boats, {LargeClub.Entries} entries; half within {taps[taps.Count / 2]:G3} ms, the slowest {taps[^1]:G3} ms; processor slowed {Phone.Slower} times; {load}")),
            new(Target.AtMost(250, "MB", "Memory of the app after that round"), RendererMemory.Megabytes(folder), string.Create(
                CultureInfo.InvariantCulture, $"proportional set size of the page's process; the program's own memory may take {heap / 1e6:0} MB of it")),
        ];
    }
}
