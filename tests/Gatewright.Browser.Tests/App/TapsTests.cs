using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>How often somebody with cold fingers has to touch the screen.</summary>
public sealed class TapsTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task An_eight_at_one_station_takes_at_most_twelve_taps_from_opening_to_its_summary()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        await phone.NewPageAsync();
        IPage page = phone.Page;

        // Counted by the page itself: a click that the browser takes for a person's, anywhere.
        await page.AddInitScriptAsync("addEventListener('click', e => { globalThis.taps = (globalThis.taps ?? 0) + (e.isTrusted ? 1 : 0); }, true);");
        await page.GotoAsync("/app/");
        await page.HeadedAsync("The demo shed");

        await page.BeginAsync("Hornbeam");
        int read = await page.ReadAllAsync(_ => 4);
        await Assertions.Expect(page.Locator("#story")).ToHaveTextAsync("Good");
        await page.Locator("#done").ClickAsync();
        await page.HeadedAsync("The round is done");
        await Assertions.Expect(page.Locator(".summary .boats li")).ToContainTextAsync("8 read");

        // The design's target: eight readings, and at most four taps beside.
        Assert.Equal(8, read);
        Assert.InRange(await page.EvaluateAsync<int>("globalThis.taps"), 9, 12);
        Assert.Empty(phone.Complaints);
    }
}
