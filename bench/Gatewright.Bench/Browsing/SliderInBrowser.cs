using System.Globalization;
using Gatewright.Bench.Reporting;
using Gatewright.Bench.Serving;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>A change of rig under the slider in the published app: on a desk, and on a phone whose processor is slowed.</summary>
internal sealed class SliderInBrowser : IBench
{
    /// <summary>One of 60 frames a second.</summary>
    private const double Frame = 16.7;

    private const int Moves = 200;

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
        string load = Machine.Load();
        IReadOnlyList<double> desk = await OnDeskAsync(playwright, folder, club.App);
        string later = Machine.Load();
        IReadOnlyList<double> slowed = await OnPhoneAsync(playwright, folder, club.App);
        return
        [
            new(Target.AtMost(Frame, "ms", "Half of a slider's moves to their painted figures, on a desk, within"), At(desk, 50), Told(desk, load)),
            new(Target.AtMost(Frame, "ms", "95 of 100 such moves within"), At(desk, 95), Told(desk, load)),
            new(Target.AtMost(50, "ms", "95 of 100 such moves on a slowed phone within"), At(slowed, 95), string.Create(
                CultureInfo.InvariantCulture, $"processor slowed {Phone.Slower} times; {Told(slowed, later)}")),
        ];
    }

    private static async Task<IReadOnlyList<double>> OnDeskAsync(IPlaywright playwright, string folder, Uri app)
    {
        await using Phone desk = await Phone.OpenAsync(playwright, folder, isSlowed: false);
        await desk.Page.SetViewportSizeAsync(1280, 800);
        return await Slides.OfAsync(desk, app, Moves);
    }

    private static async Task<IReadOnlyList<double>> OnPhoneAsync(IPlaywright playwright, string folder, Uri app)
    {
        await using Phone phone = await Phone.OpenAsync(playwright, folder);
        return await Slides.OfAsync(phone, app, Moves);
    }

    private static double At(IReadOnlyList<double> sorted, int percent) => sorted[sorted.Count * percent / 100];

    private static string Told(IReadOnlyList<double> moves, string load) => string.Create(
        CultureInfo.InvariantCulture, $"{moves.Count} moves told; half within {At(moves, 50):G3} ms, the slowest {moves[^1]:G3} ms; {load}");
}
