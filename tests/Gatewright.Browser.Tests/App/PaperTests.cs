using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>From the app to paper: by the server, and by the browser where there is no network.</summary>
public sealed class PaperTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task A_boat_leads_to_its_sheet_and_its_page_prints_without_what_is_there_to_be_touched()
    {
        await using Device device = await Device.StartAsync(demo.Site.Address, chromium, DeviceShape.Phone);
        IPage page = device.Page;
        await page.GotoAsync("/app/");
        await device.WalkInAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Nuthatch" }).First.ClickAsync();
        await page.HeadedAsync("Nuthatch");
        await page.SettledAsync();

        ILocator sheet = page.GetByRole(AriaRole.Link, new() { Name = "Print the rig sheet" });
        Assert.Equal("application/pdf", await TypeAsync(page, await sheet.GetAttributeAsync("href")));

        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator(".places")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".thumb")).ToBeHiddenAsync();
        await Assertions.Expect(sheet).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator("h1")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".gw-plan svg").First).ToBeVisibleAsync();
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.Equal("rgb(0, 0, 0)", await page.EvaluateAsync<string>("getComputedStyle(document.body).color"));
        await page.ScreenshotAsync(new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", "app-boat-on-paper.png"), FullPage = true });
        Assert.Empty(device.Complaints);
    }

    [Fact]
    public async Task Everything_that_is_printed_is_reached_from_more()
    {
        await using Device device = await Device.StartAsync(demo.Site.Address, chromium, DeviceShape.Phone);
        IPage page = device.Page;
        var faults = new List<string>();
        await page.GotoAsync("/app/");
        await device.WalkInAsync();
        await page.GotoAsync("/app/print");
        await page.HeadedAsync("Print");
        await page.HoldBothAsync("app-print", faults);

        foreach (string kind in (string[])["boats", "seats", "racks", "oars"])
        {
            await page.Locator("#label-kind").SelectOptionAsync(kind);
            await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Print the labels" })).ToHaveAttributeAsync("href", new System.Text.RegularExpressions.Regex($"of={kind}&"));
        }

        IReadOnlyList<ILocator> links = await page.Locator("main a[target=_blank]").AllAsync();
        Assert.Equal(6, links.Count);
        foreach (ILocator link in links)
        {
            Assert.Equal("application/pdf", await TypeAsync(page, await link.GetAttributeAsync("href")));
        }

        Assert.Empty(device.Complaints);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>What the browser gets at an address, as whoever is signed in.</summary>
    private static async Task<string> TypeAsync(IPage page, string? address) =>
        await page.EvaluateAsync<string>("async address => (await fetch(address)).headers.get('content-type')", address);
}
