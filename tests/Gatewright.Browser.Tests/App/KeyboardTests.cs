using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>A round without a pointer: every stop is seen, and the keys of the pad do what they say.</summary>
public sealed class KeyboardTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    // From the top of the shed to the last boat's second link, and some.
    private const int MostStops = 120;

    [Fact]
    public async Task A_round_from_the_shed_to_its_summary_by_keys_alone()
    {
        await using Device desk = await Device.InShedAsync(demo.Site.Address, chromium, DeviceShape.Desk);
        IPage page = desk.Page;

        await TabToAsync(page, "input[type=search]");
        await page.Keyboard.TypeAsync("Backwater");
        await Assertions.Expect(page.Locator(".boat")).ToHaveCountAsync(1);
        await TabToAsync(page, "a.read");
        await page.Keyboard.PressAsync("Enter");
        await page.HeadedAsync("Backwater");
        await page.Locator("#pad").WaitForAsync();
        string first = await page.NowAsync();

        // Typed from wherever the focus is, passed over, gone back to, taken back.
        await PressAsync(page, "4", "Enter");
        await Assertions.Expect(page.Locator(".now b")).Not.ToHaveTextAsync(first);
        string second = await page.NowAsync();
        await PressAsync(page, "3", ".", "7", "Enter");
        await Assertions.Expect(page.Locator(".now b")).Not.ToHaveTextAsync(second);
        await PressAsync(page, "Backspace");
        await Assertions.Expect(page.Locator(".now b")).ToHaveTextAsync(second);
        await Assertions.Expect(page.Locator(".head")).ToContainTextAsync("1 of 16");

        // A value of the pad itself, reached by arrows.
        await TabToAsync(page, "#pad [data-value][tabindex='0']");
        string home = (await page.EvaluateAsync<string>("document.activeElement.dataset.value"))!;
        await PressAsync(page, "ArrowRight");
        Assert.NotEqual(home, await page.EvaluateAsync<string>("document.activeElement.dataset.value"));
        await PressAsync(page, "ArrowLeft", "Enter");
        await Assertions.Expect(page.Locator(".head")).ToContainTextAsync("2 of 16");

        for (int read = 3; read <= 16; read++)
        {
            await PressAsync(page, "4", "Enter");
            await Assertions.Expect(page.Locator(".head")).ToContainTextAsync($"{read} of 16");
        }

        await Assertions.Expect(page.Locator("#story")).ToBeVisibleAsync();
        await page.SettledAsync();
        await TabToAsync(page, "#done");
        await page.Keyboard.PressAsync("Enter");
        await page.HeadedAsync("The round is done");
        Assert.Equal("H1", await page.EvaluateAsync<string>("document.activeElement.tagName"));
        Assert.Empty(desk.Complaints);
    }

    /// <summary>Tabs until the focus is there; where it stops on the way can be seen.</summary>
    private static async Task TabToAsync(IPage page, string selector)
    {
        for (int stops = 0; !await page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector); stops++)
        {
            Assert.True(stops < MostStops, $"{selector} is not reached by Tab");
            await page.Keyboard.PressAsync("Tab");
            Assert.True(
                await page.EvaluateAsync<bool>(
                    """
                    (e => e === document.body || (getComputedStyle(e).outlineStyle !== 'none' && parseFloat(getComputedStyle(e).outlineWidth) >= 2))(document.activeElement)
                    """),
                $"no ring round {await page.EvaluateAsync<string>("document.activeElement.outerHTML.slice(0, 120)")}");
        }
    }

    private static async Task PressAsync(IPage page, params string[] keys)
    {
        foreach (string key in keys)
        {
            await page.Keyboard.PressAsync(key);
        }
    }
}
