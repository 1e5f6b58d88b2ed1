using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>
/// A boat chosen by the code on its label. The camera is the browser's own pretended one; reading a code is the phone's
/// affair, which a browser on a desk does not do: it is put in the phone's place.
/// </summary>
public sealed class ScanTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task A_label_before_the_camera_picks_its_boat_and_the_camera_is_let_go()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        await phone.NewPageAsync();
        IPage page = phone.Page;
        await page.AddInitScriptAsync(
            """
            globalThis.BarcodeDetector = class { async detect(video) { return video.videoWidth > 0 && globalThis.label ? [{ rawValue: globalThis.label }] : []; } };
            """);
        await page.GotoAsync("/app/round");
        await page.HeadedAsync("Round");
        ILocator scan = page.Locator("#scan");
        ILocator levanter = page.GetByRole(AriaRole.Checkbox, new() { Name = "Levanter" });

        await scan.ClickAsync();
        await page.UntilAsync("document.querySelector('video').srcObject?.active === true && document.querySelector('video').videoWidth > 0");
        await page.EvaluateAsync("globalThis.label = 'of another shed'");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("of another shed");
        await Assertions.Expect(scan).ToHaveAttributeAsync("aria-pressed", "false");
        await page.UntilAsync("document.querySelector('video').srcObject.active === false");
        await Assertions.Expect(levanter).Not.ToBeCheckedAsync();

        await page.EvaluateAsync("globalThis.label = location.origin + '/app/boat/levanter'");
        await scan.ClickAsync();
        await Assertions.Expect(levanter).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);

        // Whoever leaves with the camera on leaves it off.
        await page.EvaluateAsync("globalThis.label = null");
        await scan.ClickAsync();
        await page.UntilAsync("document.querySelector('video').srcObject?.active === true");
        await page.EvaluateAsync("() => { globalThis.seen = document.querySelector('video').srcObject; }");
        await page.PlaceAsync("Jobs");
        await page.UntilAsync("globalThis.seen.active === false");
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_browser_that_reads_no_codes_offers_no_camera_and_takes_the_code_as_text()
    {
        await using Device desk = await Device.InShedAsync(demo.Site.Address, chromium, DeviceShape.Desk);
        IPage page = desk.Page;
        Assert.False(await page.EvaluateAsync<bool>("'BarcodeDetector' in globalThis"));
        await page.PlaceAsync("Round");

        await page.GetByRole(AriaRole.Searchbox).FillAsync("levanter");

        await Assertions.Expect(page.GetByRole(AriaRole.Checkbox, new() { Name = "Levanter" })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".rack input[type=checkbox]")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("#scan")).ToHaveCountAsync(0);
    }
}
