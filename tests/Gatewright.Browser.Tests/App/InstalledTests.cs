using System.Text.Json;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>The app is kept on the device: it starts without a network, and without the server.</summary>
public sealed class InstalledTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task What_a_browser_asks_of_an_installable_app_is_there()
    {
        await using Device phone = await Device.StartAsync(demo.Site.Address, chromium);
        await phone.WalkInAsync();

        string text = await phone.Page.EvaluateAsync<string>("fetch('manifest.webmanifest').then(r => r.text())");
        using var manifest = JsonDocument.Parse(text);
        Assert.Equal("/app/", manifest.RootElement.GetProperty("start_url").GetString());
        Assert.Equal("standalone", manifest.RootElement.GetProperty("display").GetString());
        List<string> sizes = [];
        foreach (JsonElement icon in manifest.RootElement.GetProperty("icons").EnumerateArray())
        {
            string source = icon.GetProperty("src").GetString()!;
            sizes.Add(icon.GetProperty("sizes").GetString()!);
            Assert.True(
                await phone.Page.EvaluateAsync<bool>("s => new Promise(r => { const i = new Image(); i.onload = () => r(true); i.onerror = () => r(false); i.src = s; })", source),
                $"{source} is no picture");
        }

        // W3C, Web Application Manifest, members name, icons, start_url, display; 192 and 512 as browsers ask to install (from memory).
        Assert.Contains("192x192", sizes);
        Assert.Contains("512x512", sizes);
        Assert.Equal(string.Empty, string.Join('\n', phone.Complaints));
    }

    [Fact]
    public async Task The_first_start_after_it_was_kept_needs_neither_network_nor_server()
    {
        await using AppSite site = await AppSite.StartAsync();
        await using Device phone = await Device.StartAsync(site.Address, chromium);
        await phone.WalkInAsync();
        await Assertions.Expect(phone.Page.Locator(".boat")).ToHaveCountAsync(26);
        await phone.OfflineAsync(true);
        await site.KillAsync();

        await phone.NewPageAsync();
        await phone.Page.GotoAsync("/app/");

        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("The demo shed");
        await Assertions.Expect(phone.Page.Locator(".boat")).ToHaveCountAsync(26);
        await Assertions.Expect(phone.Page).ToHaveTitleAsync("The demo shed · Gatewright");
        await phone.Page.PlaceAsync("Jobs");
        await Assertions.Expect(phone.Page).ToHaveTitleAsync("Jobs · Gatewright");
        Assert.Equal(string.Empty, string.Join('\n', phone.Complaints));
    }

    [Fact]
    public async Task The_shed_as_last_seen_stands_there_before_the_program_does()
    {
        await using Device phone = await Device.StartAsync(demo.Site.Address, chromium);
        await phone.WalkInAsync();
        string[] boats = await KeptShedAsync(phone.Page);

        // The runtime never comes: what is on the screen then is what was kept.
        await phone.NewPageAsync();
        await phone.Page.AddInitScriptAsync("for (const n of ['compile', 'compileStreaming', 'instantiate', 'instantiateStreaming']) { WebAssembly[n] = () => new Promise(() => { }); }");
        await phone.Page.GotoAsync("/app/");

        // Those that a screen has room for, and somewhat more.
        ILocator shown = phone.Page.Locator(".boat .name");
        await Assertions.Expect(shown.First).ToHaveTextAsync(boats[0]);
        string[] first = [.. await shown.AllInnerTextsAsync()];
        Assert.Equal(boats[..first.Length], first);
        Assert.InRange(first.Length, 8, boats.Length - 5);
        Assert.True(await phone.Page.EvaluateAsync<bool>("document.getElementById('app').inert"));
        Assert.Matches(@"^As last seen \S.*\d:\d\d", await phone.Page.EvaluateAsync<string>("document.getElementById('app').dataset.last"));
        await Assertions.Expect(phone.Page.Locator(".boat .about").First).ToBeVisibleAsync();

        // As after something was recorded on another page, and the program was closed there.
        await phone.Page.EvaluateAsync("() => gatewright.outdateShed()");
        await phone.Page.ReloadAsync();

        await Assertions.Expect(shown.First).ToHaveTextAsync(boats[0]);
        await Assertions.Expect(phone.Page.Locator(".boat .about").First).ToBeHiddenAsync();
        await Assertions.Expect(phone.Page.Locator(".boat svg").First).ToBeHiddenAsync();

        // As when the club is let go of: whoever starts the program then sees no boat of it.
        await phone.Page.EvaluateAsync("import('/app/device.js').then(device => device.forgetShed())");
        await phone.Page.ReloadAsync();

        await Assertions.Expect(phone.Page.Locator("#app .starting")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.Locator(".boat")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task All_boats_as_last_seen_stand_there_while_a_large_club_is_being_opened()
    {
        await using Device phone = await Device.StartAsync(demo.Site.Address, chromium);
        await phone.WalkInAsync();
        string[] boats = await KeptShedAsync(phone.Page);

        // The journal never comes from the disk.
        await phone.NewPageAsync();
        await phone.Page.AddInitScriptAsync("const all = IDBObjectStore.prototype.getAll; IDBObjectStore.prototype.getAll = function (...of) { return this.name === 'blocks' ? {} : all.apply(this, of); };");
        await phone.Page.GotoAsync("/app/");

        await Assertions.Expect(phone.Page.Locator(".last-seen .boat")).ToHaveCountAsync(boats.Length);
        Assert.Equal(boats, await phone.Page.Locator(".last-seen .boat .name").AllInnerTextsAsync());
        Assert.True(await phone.Page.EvaluateAsync<bool>("document.querySelector('.last-seen').inert"));
        Assert.False(await phone.Page.EvaluateAsync<bool>("document.getElementById('app').inert"));
    }

    /// <summary>The boats' names, in order, once the shed is kept.</summary>
    private static async Task<string[]> KeptShedAsync(IPage page)
    {
        await page.UntilAsync("localStorage.getItem('gatewright.last-shed')?.includes('Nuthatch') === true && localStorage.getItem('gatewright.last-shed-first') !== null");
        return [.. await page.Locator(".boat .name").AllInnerTextsAsync()];
    }
}
