using System.Globalization;
using Gatewright.Bench.Reporting;
using Gatewright.Bench.Serving;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>
/// The published app in a real browser whose processor is slowed, beside an empty program of the same kind: what both take
/// to start is the runtime's, and only what the app takes beyond that is ours. Each start is of a browser just opened.
/// </summary>
internal sealed class AppInBrowser : IBench
{
    // Starts differ by a tenth from one to the next: of fewer the middle one tells of the moment as much as of the program.
    private const int Runs = 7;

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
        await using LargeClub club = await LargeClub.MakeAsync(folders);

        string load = Machine.Load();
        List<FirstLoad> firstEmpty = [], first = [];
        for (int run = 0; run < Runs; run++)
        {
            emptyPhone = folders.New();
            firstEmpty.Add(await FirstLoad.OfAsync(playwright, emptyPhone, emptyRelay, emptyRelay.Address, hasWorker: false));
            first.Add(await FirstLoad.OfAsync(playwright, folders.New(), club.Relay, club.App, hasWorker: true));
        }

        FirstLoad middle = Middle(first, l => l.Wire);
        yield return new(Target.AtMost(3.2, "MB", "First load of the app over the wire"), middle.Wire, string.Create(
            CultureInfo.InvariantCulture,
            $"all that the server sent, page and worker; {middle.Page:G3} MB of it for the page, {middle.Wire - middle.Page:G3} MB for the worker's own look at the same files; the empty one {Middle(firstEmpty, l => l.Wire).Wire:G3} MB"));
        yield return Ratio("Usable on the first load, to the empty one's", [.. first.Select(l => l.Times)], [.. firstEmpty.Select(l => l.Times)], load);

        string phone = await club.PullAsync(playwright, folders);
        load = Machine.Load();
        List<StartTimes> laterEmpty = [], later = [];
        for (int run = 0; run < Runs; run++)
        {
            laterEmpty.Add(await LaterAsync(playwright, emptyPhone, emptyRelay.Address));
            later.Add(await LaterAsync(playwright, phone, club.App, hasShed: true));
        }

        yield return Ratio("Usable on later starts, to the empty one's", later, laterEmpty, load);
        yield return new(Target.AtMost(1, "s", "Last known shed painted"), Middle(later, t => t.Seen ?? double.PositiveInfinity).Seen ?? double.PositiveInfinity, string.Create(
            CultureInfo.InvariantCulture, $"median of {Runs}; the program's own heading after {Middle(later, t => t.Drawn).Drawn:G3} s; {load}"));
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
