using System.Globalization;
using Gatewright.Bench.Reporting;
using Gatewright.Bench.Serving;
using Gatewright.Store;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>
/// The published app in a real browser whose processor is slowed, beside an empty program of the same kind: what both take
/// to start is the runtime's, and only what the app takes beyond that is ours. Each start is of a browser just opened.
/// </summary>
internal sealed class AppInBrowser : IBench
{
    private const int Runs = 3;
    private const int Entries = 50_000;
    private const int AtLeastTaps = 100;

    public IEnumerable<Measured> Measure()
    {
        var folder = new Folders();
        try
        {
            foreach (Measured measured in MeasureAsync(folder).ToBlockingEnumerable())
            {
                yield return measured;
            }
        }
        finally
        {
            folder.Delete();
        }
    }

    private static async IAsyncEnumerable<Measured> MeasureAsync(Folders folders)
    {
        RunningServer.Publish();
        using IPlaywright playwright = await Playwright.CreateAsync();
        await using EmptySite empty = await EmptySite.StartAsync();
        await using var emptyRelay = new Relay(empty.Address);
        string emptyPhone = string.Empty;
        var location = StoreLocation.File(Path.Combine(folders.New(), "gatewright.db"));
        ServedJournal journal = await ServedJournal.MakeAsync(location, Entries);
        using RunningServer server = RunningServer.Over(location);
        await using var relay = new Relay(server.Address);
        Uri app = new(relay.Address, "/app/");

        string load = Machine.Load();
        List<FirstLoad> firstEmpty = [], first = [];
        for (int run = 0; run < Runs; run++)
        {
            emptyPhone = folders.New();
            firstEmpty.Add(await FirstLoad.OfAsync(playwright, emptyPhone, emptyRelay, emptyRelay.Address, hasWorker: false));
            first.Add(await FirstLoad.OfAsync(playwright, folders.New(), relay, app, hasWorker: true));
        }

        FirstLoad middle = Middle(first, l => l.Wire);
        yield return new(Target.AtMost(3.2, "MB", "First load of the app over the wire"), middle.Wire, string.Create(
            CultureInfo.InvariantCulture,
            $"all that the server sent, page and worker; {middle.Page:G3} MB of it for the page, {middle.Wire - middle.Page:G3} MB for the worker's own look at the same files; the empty one {Middle(firstEmpty, l => l.Wire).Wire:G3} MB"));
        yield return Ratio("Usable on the first load, to the empty one's", [.. first.Select(l => l.Times)], [.. firstEmpty.Select(l => l.Times)], load);

        string phone = folders.New();
        await KeptClub.PullAsync(playwright, phone, app, journal.Cookies);
        load = Machine.Load();
        List<StartTimes> laterEmpty = [], later = [];
        for (int run = 0; run < Runs; run++)
        {
            laterEmpty.Add(await LaterAsync(playwright, emptyPhone, emptyRelay.Address));
            later.Add(await LaterAsync(playwright, phone, app, hasShed: true));
        }

        yield return Ratio("Usable on later starts, to the empty one's", later, laterEmpty, load);
        yield return new(Target.AtMost(1, "s", "Last known shed painted"), Middle(later, t => t.Seen ?? double.PositiveInfinity).Seen ?? double.PositiveInfinity, string.Create(
            CultureInfo.InvariantCulture, $"median of {Runs}; the program's own heading after {Middle(later, t => t.Drawn).Drawn:G3} s; {load}"));
        await foreach (Measured measured in RoundAsync(playwright, phone, app))
        {
            yield return measured;
        }
    }

    private static async IAsyncEnumerable<Measured> RoundAsync(IPlaywright playwright, string folder, Uri app)
    {
        await using Phone phone = await Phone.OpenAsync(playwright, folder);
        await StartTimes.OfAsync(phone, app, hasShed: true);
        string load = Machine.Load();
        IReadOnlyList<double> taps = await Taps.OfAsync(phone, AtLeastTaps);
        yield return new(Target.AtMost(100, "ms", "95 of 100 taps to their verdict painted within"), taps[taps.Count * 95 / 100], string.Create(
            CultureInfo.InvariantCulture,
            $"{taps.Count} taps, 60 boats, {Entries} entries; half within {taps[taps.Count / 2]:G3} ms, the slowest {taps[^1]:G3} ms; {load}"));
        long heap = await phone.Page.EvaluateAsync<long>("() => Blazor.runtime.Module.HEAPU8.length");
        yield return new(Target.AtMost(250, "MB", "Memory of the app after that round"), RendererMemory.Megabytes(folder), string.Create(
            CultureInfo.InvariantCulture, $"proportional set size of the page's process; {heap / 1e6:0} MB of it may be the program's own memory"));
    }

    private static async Task<StartTimes> LaterAsync(IPlaywright playwright, string folder, Uri address, bool hasShed = false)
    {
        await using Phone phone = await Phone.OpenAsync(playwright, folder);
        return await StartTimes.OfAsync(phone, address, hasShed);
    }

    private static Measured Ratio(string what, List<StartTimes> app, List<StartTimes> empty, string load) => new(
        Target.AtMost(1.25, "times", what), Middle(app, t => t.Usable).Usable / Middle(empty, t => t.Usable).Usable,
        string.Create(CultureInfo.InvariantCulture, $"{Told(app)}, to {Told(empty)}; medians of {Runs}; processor slowed {Phone.Slower} times; {load}"));

    private static string Told(List<StartTimes> runs) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Middle(runs, t => t.Usable).Usable:G3} s, its heading after {Middle(runs, t => t.Drawn).Drawn:G3} s{(runs.Exists(t => t.Listed is null) ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", its boats listed after {Middle(runs, t => t.Listed!.Value).Listed:G3} s"))}");

    private static T Middle<T>(List<T> runs, Func<T, double> figure) => runs.OrderBy(figure).ElementAt(runs.Count / 2);
}
