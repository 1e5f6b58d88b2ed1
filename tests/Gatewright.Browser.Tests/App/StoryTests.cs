using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>The whole job, without a network from the first tap to the last, and what another device then sees of it.</summary>
public sealed partial class StoryTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    // Invented for the demo: examples/README.md tells the truth about Bittern. Its seat 5 stands at 3 on a pin that leans
    // out by 2.6; all others are sound.
    private const string Wrong = "5 starboard";
    private const decimal Sound = 4;
    private const decimal WrongCatch = 5;
    private const decimal WrongFinish = 1;
    private const decimal WrongOnceMended = 3;

    [Fact]
    public async Task A_wrong_gate_is_found_mended_and_proven_in_the_shed_and_then_shared()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        IPage page = phone.Page;
        await phone.OfflineAsync(true);

        await ReadAsync(page);
        await PlanAsync(page);
        await MendAsync(page);
        await ProveAsync(page);
        await CloseAsync(page);
        await Assertions.Expect(page.Locator(".shared-state")).ToContainTextAsync("not shared yet");

        await phone.OfflineAsync(false);
        await Assertions.Expect(page.Locator(".shared-state")).ToHaveTextAsync("Shared");
        Assert.Empty(phone.Complaints);

        await using Device desk = await Device.InShedAsync(demo.Site.Address, chromium, DeviceShape.Desk);
        await SeenElsewhereAsync(desk.Page);
        Assert.Empty(desk.Complaints);
    }

    private static async Task ReadAsync(IPage page)
    {
        await page.PlaceAsync("Round");
        await page.GetByLabel("Catch").CheckAsync();
        await page.GetByLabel("Finish").CheckAsync();
        await page.GetByLabel("Abeam").UncheckAsync();
        await page.Locator("#search").FillAsync("bitt");
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "Bittern" }).CheckAsync();
        await page.Locator("#begin").ClickAsync();
        await page.Locator("#pad").WaitForAsync();
        int read = await page.ReadAllAsync(place => !place.StartsWith(Wrong, StringComparison.Ordinal) ? Sound
            : place.EndsWith("catch", StringComparison.Ordinal) ? WrongCatch : WrongFinish);
        Assert.Equal(16, read);

        await Assertions.Expect(page.Locator("#story")).ToHaveTextAsync("Adjust");
        await page.SettledAsync();
        await Assertions.Expect(page.Locator(".wrongs li").First).ToContainTextAsync("starboard");
        await Assertions.Expect(page.Locator(".causes > li").First).ToContainTextAsync("5 starboard");
        await Assertions.Expect(page.Locator(".causes .likely").Filter(new() { HasTextRegex = LeansOut() }).First).ToBeVisibleAsync();
    }

    private static async Task PlanAsync(IPage page)
    {
        await page.Locator("#plan-job").ClickAsync();
        await page.HeadedAsync("Bittern");
        await page.Locator(".gates a").First.ClickAsync();
        await page.HeadedAsync("5 starboard");
        await page.GetByRole(AriaRole.Radio).And(page.Locator("[name=cause]")).First.WaitForAsync();
        await page.Locator("label", new() { Has = page.Locator("[name=cause]"), HasTextRegex = LeansOut() }).First.ClickAsync();
        ILocator remedies = page.Locator("[name=remedy]");
        Assert.NotEqual(0, await remedies.CountAsync());
        await Assertions.Expect(page.Locator(".caution").First).ToBeVisibleAsync();
        await page.Locator("#plan").ClickAsync();
        await page.HeadedAsync("Bittern: ");
    }

    private static async Task MendAsync(IPage page)
    {
        ILocator steps = page.Locator(".steps [type=checkbox]");
        int all = await steps.CountAsync();
        Assert.NotEqual(0, all);
        for (int i = 0; i < all; i++)
        {
            await steps.Nth(i).ClickAsync();
            await Assertions.Expect(page.Locator(".steps .done")).ToHaveCountAsync(i + 1);
        }
    }

    private static async Task ProveAsync(IPage page)
    {
        await page.Locator("#recheck").ClickAsync();
        await page.Locator("#pad").WaitForAsync();
        ILocator read = page.Locator(".stations b");
        for (int i = 0; i < await read.CountAsync(); i++)
        {
            await page.Locator($"#pad [data-value='{WrongOnceMended.ToString("0.0", CultureInfo.InvariantCulture)}']").ClickAsync();
            await Assertions.Expect(read.Nth(i)).Not.ToHaveTextAsync("–");
        }

        await page.Locator("#to-job").ClickAsync();
        await page.HeadedAsync("Bittern: ");
        await Assertions.Expect(page.Locator("table .good.inside")).ToHaveCountAsync(3);
        await Assertions.Expect(page.GetByText("The work did what it was to do")).ToBeVisibleAsync();
    }

    private static async Task CloseAsync(IPage page)
    {
        Assert.Matches(LeansOut(), await page.Locator("label", new() { Has = page.Locator("[name=found]:checked") }).TextContentAsync());
        await page.Locator("#close").ClickAsync();
        await Assertions.Expect(page.GetByText("Finished ")).ToBeVisibleAsync();
    }

    private static async Task SeenElsewhereAsync(IPage page)
    {
        await page.PlaceAsync("Jobs");
        await Assertions.Expect(page.Locator(".closed")).ToContainTextAsync("Bittern: seat 5 starboard");
        await page.PlaceAsync("Shed");
        await page.GetByRole(AriaRole.Link, new() { Name = "Bittern" }).First.ClickAsync();
        await page.HeadedAsync("Bittern");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = SeatFive() }).ClickAsync();
        await page.HeadedAsync("5 starboard");
        ILocator now = page.Locator("section", new() { Has = page.Locator("#gate-taken") }).Locator("li:not(.old) .value");
        await Assertions.Expect(now.First).ToContainTextAsync("3.0");
    }

    [GeneratedRegex("leans out", RegexOptions.IgnoreCase)]
    private static partial Regex LeansOut();

    [GeneratedRegex("^seat 5", RegexOptions.IgnoreCase)]
    private static partial Regex SeatFive();
}
