using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>Text twice as large on the smallest phone (WCAG 2.2, 1.4.4 and 1.4.10): nothing is cut off, and all still works.</summary>
public sealed class LargeTextTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    private readonly List<string> _faults = [];

    [Fact]
    public async Task A_round_and_the_main_screens_stand_text_twice_as_large()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium, DeviceShape.Phone with { HasLargeText = true });
        IPage page = phone.Page;
        Assert.Equal("32px", await page.EvaluateAsync<string>("getComputedStyle(document.documentElement).fontSize"));
        await StandsAsync(page, "shed");

        // Each is touched where a finger finds it: what lies over it, or leads off the screen, fails here.
        await page.BeginAsync("Hazel");
        await StandsAsync(page, "reading");
        Assert.Equal(8, await page.ReadAllAsync(_ => 4));
        await page.SettledAsync();
        await StandsAsync(page, "story");
        await page.Locator("#done").ClickAsync();
        await page.HeadedAsync("The round is done");
        await StandsAsync(page, "summary");
        await page.Locator("#to-shed").ClickAsync();
        await page.HeadedAsync("The demo shed");

        await page.GetByRole(AriaRole.Link, new() { Name = "Nuthatch" }).First.ClickAsync();
        await page.HeadedAsync("Nuthatch");
        await page.SettledAsync();
        await StandsAsync(page, "boat");
        foreach (string place in (string[])["Jobs", "Report", "More", "Round"])
        {
            await page.PlaceAsync(place);
            await page.SettledAsync();
            await StandsAsync(page, place);
        }

        Assert.Empty(phone.Complaints);
        Assert.True(_faults.Count == 0, string.Join('\n', _faults));
    }

    private async Task StandsAsync(IPage page, string name)
    {
        await page.PictureAsync("large-" + name);
        string cut = await page.EvaluateAsync<string>(
            """
            [...document.querySelectorAll('main *, nav *')]
              .filter(e => e.checkVisibility() && !e.closest('.hidden-words, svg') && e.innerText?.trim()
                && getComputedStyle(e).overflowX !== 'visible' && !/auto|scroll/.test(getComputedStyle(e).overflowX)
                && (e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1))
              .map(e => `cut off: ${e.outerHTML.slice(0, 120)}`).join('\n')
            """);
        _faults.AddRange(((string[])[await page.OverhangingAsync(), cut]).Where(f => f.Length > 0).Select(f => $"{name}: {f}"));
    }
}
