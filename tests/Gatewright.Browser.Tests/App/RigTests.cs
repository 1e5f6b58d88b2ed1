using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>A rig measured place by place with a phone, no network, and what comes of it on the boat's pages.</summary>
public sealed class RigTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task An_eights_spreads_are_measured_without_a_network_judged_at_once_and_kept()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        IPage page = phone.Page;
        string boat = await EightAsync(page);
        await page.GotoAsync($"/app/boat/{boat}/rig/measure");
        await page.Locator("#begin-measuring").WaitForAsync();
        await ChooseAsync(page, "spread");
        await phone.OfflineAsync(true);
        await page.Locator("#begin-measuring").ClickAsync();
        await page.Locator("#pad").WaitForAsync();
        Assert.Equal("Seat 1, spread", await page.NowAsync());

        await page.TapAsync(84);
        await Assertions.Expect(page.Locator(".tell")).ToContainTextAsync("Seat 1: 84.0 ± 0.3 cm");
        await Assertions.Expect(page.Locator(".tell .good")).ToHaveTextAsync("good");
        await page.TapAsync(89);
        await Assertions.Expect(page.Locator(".tell .adjust")).ToHaveTextAsync("adjust");
        await Assertions.Expect(page.Locator(".tell")).ToContainTextAsync("above");
        string place = await page.NowAsync();

        await page.ReloadAsync();

        await page.Locator("#pad").WaitForAsync();
        Assert.Equal(place, await page.NowAsync());
        await Assertions.Expect(page.Locator(".progress")).ToHaveTextAsync("2 of 8");

        // Back to the second seat, as it was set meanwhile; one is typed to the millimetre with the keyboard alone.
        await page.Locator("#undo").ClickAsync();
        await Assertions.Expect(page.Locator(".now")).ToContainTextAsync("Seat 2");
        await page.TapAsync(84);
        await page.Keyboard.TypeAsync("84.3");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".now")).ToContainTextAsync("Seat 4");
        for (int left = 5; left > 0; left--)
        {
            await page.TapAsync(84);
        }

        await Assertions.Expect(page.Locator("#end-measuring")).ToBeVisibleAsync();
        await page.Locator("#end-measuring").ClickAsync();
        ILocator spread = page.Locator("section[aria-labelledby=m-spread]");
        await Assertions.Expect(spread).ToContainTextAsync("84.3 ± 0.3 cm");
        await Assertions.Expect(spread.Locator(".places li")).ToHaveCountAsync(8);
        Assert.Empty(phone.Complaints);
    }

    /// <summary>The key of the shed's first eight, by how many gates its plan has.</summary>
    private static async Task<string> EightAsync(IPage page)
    {
        ILocator eight = page.Locator(".boat", new() { HasTextRegex = new("8\\+") }).First;
        await eight.WaitForAsync();
        string href = (await eight.Locator("a[href^='boat/']").First.GetAttributeAsync("href"))!;
        return href["boat/".Length..];
    }

    private static async Task ChooseAsync(IPage page, string only)
    {
        foreach (ILocator box in await page.Locator(".measure input").AllAsync())
        {
            await box.SetCheckedAsync(await box.GetAttributeAsync("id") == "measure-" + only);
        }
    }
}
