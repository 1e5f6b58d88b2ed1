using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>A newer program comes while something recorded has not reached the server.</summary>
public sealed class UpdateTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    private const string Exchange = "**/api/**";

    [Fact]
    public async Task A_newer_program_waits_until_it_is_asked_for_and_strands_nothing()
    {
        await using Passage passage = await Passage.StartAsync(demo.Site.Address);
        await using Device phone = await Device.InShedAsync(passage.Address, chromium);
        IPage page = phone.Page;
        string before = await VersionAsync(page);

        // The site is reached, its exchange is not: what is recorded now stays on the phone.
        await phone.RouteAsync(Exchange, route => route.AbortAsync());
        await page.BeginAsync("Levanter");
        await page.TapAsync(4);
        await Assertions.Expect(page.Locator(".shared-state")).ToContainTextAsync("not shared yet");
        passage.Renew(before, "newer");
        await page.EvaluateAsync("navigator.serviceWorker.getRegistration().then(r => r.update()).then(() => true)");

        // In the middle of a round nobody is asked anything.
        await page.UntilAsync("navigator.serviceWorker.getRegistration().then(r => r.waiting !== null)");
        await Assertions.Expect(page.Locator(".newer")).ToHaveCountAsync(0);
        await page.TapAsync(4);
        Assert.Equal(before, await VersionAsync(page));

        await page.GotoAsync("/app/");
        await page.HeadedAsync("The demo shed");
        string waiting = (await page.Locator(".shared-state").TextContentAsync())!;
        await page.TouchAsync(page.Locator(".newer button"), "caches.keys().then(k => k.join()).then(k => k.includes('newer') && !k.includes(','))");
        await page.HeadedAsync("The demo shed");
        await Assertions.Expect(page.Locator(".newer")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".shared-state")).ToHaveTextAsync(waiting);
        Assert.Contains("not shared yet", waiting, StringComparison.Ordinal);

        await phone.UnrouteAsync(Exchange);
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".shared-state")).ToHaveTextAsync("Shared");
        await page.GotoAsync("/app/boat/levanter");
        await page.HeadedAsync("Levanter");
        Assert.Equal(string.Empty, string.Join('\n', phone.Complaints));
    }

    /// <summary>The version of the program that this device keeps.</summary>
    private static Task<string> VersionAsync(IPage page) =>
        page.EvaluateAsync<string>("caches.keys().then(k => k.find(n => n.startsWith('gatewright-program-')).slice('gatewright-program-'.length))");
}
