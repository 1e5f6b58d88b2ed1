using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>What was tapped in stays, whatever happens to the page, the browser or the network.</summary>
public sealed class NothingLostTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task A_reload_in_the_middle_of_a_round_goes_on_where_it_was()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        IPage page = phone.Page;
        Task<IWorker> writer = page.WaitForWorkerAsync();
        await page.BeginAsync("Bise");
        Assert.EndsWith("/shelf-writer.js", (await writer).Url, StringComparison.Ordinal);
        await page.TapAsync(4);
        await page.TapAsync(4.5m);
        await page.TapAsync(3.5m);
        string place = await page.NowAsync();

        await page.ReloadAsync();

        await page.HeadedAsync("Bise");
        Assert.Equal(place, await page.NowAsync());
        await Assertions.Expect(page.Locator(".head")).ToContainTextAsync("3 of 8");
        Assert.Equal(["3.5°", "4.0°", "4.5°"], await NumbersAsync(page));
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_browser_that_lets_nothing_run_beside_the_page_writes_in_it()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        await phone.Page.AddInitScriptAsync("globalThis.Worker = function () { throw new DOMException('not allowed', 'SecurityError'); };");
        await phone.Page.ReloadAsync();
        await phone.Page.BeginAsync("Bise");
        await phone.Page.TapAsync(4);
        await phone.Page.TapAsync(3.5m);

        await phone.Page.ReloadAsync();

        await phone.Page.HeadedAsync("Bise");
        Assert.Equal(["3.5°", "4.0°"], await NumbersAsync(phone.Page));
    }

    /// <summary>A system short of memory may take the thread away that writes, and nobody is told of it.</summary>
    [Theory]
    [InlineData("it never heard of anything", "")]
    [InlineData("it wrote, and its answers were lost", "this.beside.postMessage(asked);")]
    public async Task A_thread_that_falls_silent_loses_nothing_and_writes_nothing_twice(string what, string heard)
    {
        Assert.NotEmpty(what);
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        await phone.Page.AddInitScriptAsync($$"""
            const Beside = globalThis.Worker;
            globalThis.ended = 0;
            globalThis.Worker = class {
              constructor(...of) {
                this.beside = new Beside(...of);
                this.beside.onmessage = told => { if (told.data.isReady) { this.onmessage(told); } };
              }
              postMessage(asked) { {{heard}} }
              terminate() { this.beside.terminate(); globalThis.ended++; }
            };
            """);
        await phone.OfflineAsync(true);
        await phone.Page.ReloadAsync();
        Task<IWorker> writer = phone.Page.WaitForWorkerAsync();
        await phone.Page.BeginAsync("Bise");
        await writer;
        await phone.Page.TapAsync(4);
        await phone.Page.TapAsync(3.5m);
        Assert.Equal(1, await phone.Page.EvaluateAsync<int>("globalThis.ended"));

        await phone.Page.ReloadAsync();

        await phone.Page.HeadedAsync("Bise");
        await Assertions.Expect(phone.Page.Locator(".head")).ToContainTextAsync("2 of 8");
        Assert.Equal(["3.5°", "4.0°"], await NumbersAsync(phone.Page));
        Assert.Equal(0, await phone.Page.EvaluateAsync<int>("""
            new Promise(told => {
              const opening = indexedDB.open('gatewright');
              opening.onsuccess = () => {
                const reading = opening.result.transaction('own').objectStore('own').getAll();
                reading.onsuccess = () => { opening.result.close(); told(reading.result.length - new Set(reading.result.map(own => own.text)).size); };
              };
            })
            """));
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_battery_that_dies_once_a_number_stood_there_takes_nothing_with_it()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        await phone.OfflineAsync(true);
        await phone.Page.BeginAsync("Meltemi");
        await phone.Page.TapAsync(4);
        await phone.Page.TapAsync(4.5m);
        string place = await phone.Page.NowAsync();
        await phone.KillAsync();

        await phone.StartAgainAsync();
        await phone.OfflineAsync(true);
        IPage page = phone.Page;
        await page.GotoAsync("/app/");
        await page.HeadedAsync("The demo shed");
        await page.PlaceAsync("Round");
        await page.Locator("#go-on").ClickAsync();
        await page.HeadedAsync("Meltemi");
        Assert.Equal(place, await page.NowAsync());
        Assert.Equal(["4.0°", "4.5°"], await NumbersAsync(page));
        await page.ReadAllAsync(_ => 4);
        await Assertions.Expect(page.Locator("#story")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".head")).ToContainTextAsync("4 of 4");
    }

    [Fact]
    public async Task Two_phones_at_one_boat_without_a_network_both_end_with_all_readings()
    {
        await using Device one = await Device.InShedAsync(demo.Site.Address, chromium);
        await using Device other = await Device.InShedAsync(demo.Site.Address, chromium);
        await one.OfflineAsync(true);
        await other.OfflineAsync(true);

        // Each phone reads two gates, and both read one and the same. The demo's own readings are of catch and finish alone.
        await one.Page.BeginAsync("Hornbeam");
        await other.Page.BeginAsync("Hornbeam");
        await other.Page.Locator("#skip").ClickAsync();
        List<string> places = [await one.Page.NowAsync()];
        await one.Page.TapAsync(3.5m);
        places.Add(await one.Page.NowAsync());
        await one.Page.TapAsync(4);
        Assert.Equal(places[1], await other.Page.NowAsync());
        await other.Page.TapAsync(4.5m);
        places.Add(await other.Page.NowAsync());
        await other.Page.TapAsync(5);

        await one.OfflineAsync(false);
        await other.OfflineAsync(false);
        foreach (Device phone in (Device[])[one, other])
        {
            await phone.Page.GotoAsync("/app/");
            await phone.Page.HeadedAsync("The demo shed");
            await Assertions.Expect(phone.Page.Locator(".shared-state")).ToHaveTextAsync("Shared");
            Assert.Equal(["3.5"], await TodayAsync(phone.Page, places[0]));
            Assert.Equal(["4.0", "4.5"], await TodayAsync(phone.Page, places[1]));
            Assert.Equal(["5.0"], await TodayAsync(phone.Page, places[2]));
            Assert.Empty(phone.Complaints);
        }
    }

    /// <summary>The numbers that stand in the plan.</summary>
    private static async Task<List<string>> NumbersAsync(IPage page)
    {
        IReadOnlyList<string> all = await page.Locator(".gw-plan svg text").AllTextContentsAsync();
        return [.. all.Select(t => t.Trim()).Where(t => t.EndsWith('°') && !t.StartsWith('±')).Order(StringComparer.Ordinal)];
    }

    /// <summary>What was read abeam today at a gate, from its page.</summary>
    private static async Task<List<string>> TodayAsync(IPage page, string place)
    {
        string[] words = place.Split(' ', ',');
        await page.GotoAsync($"/app/boat/hornbeam/gate/{words[0]}/{words[1].ToLowerInvariant()}");
        await page.HeadedAsync("Hornbeam");
        ILocator abeam = page.Locator("section", new() { Has = page.Locator("#gate-taken") }).Locator("li", new() { HasText = "Abeam" });
        await abeam.First.WaitForAsync();
        return [.. (await abeam.Locator(".value").AllInnerTextsAsync()).Select(t => t.Trim().TrimEnd('°')).Order(StringComparer.Ordinal)];
    }
}
