using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>The screens of somebody who begins: nothing in the shed yet.</summary>
public sealed class EmptyShedTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    private readonly List<string> _faults = [];

    [Fact]
    public Task An_empty_shed_says_how_to_begin() => BeginAsync(isPhone: true);

    /// <summary>The same screens, laid out otherwise.</summary>
    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public Task An_empty_shed_says_how_to_begin_at_a_desk() => BeginAsync(isPhone: false);

    private async Task BeginAsync(bool isPhone)
    {
        await using Device device = await Device.StartAsync(demo.Site.Address, chromium, isPhone ? DeviceShape.Phone : DeviceShape.Desk);
        IPage page = device.Page;
        await page.GotoAsync("/app/");
        await page.Locator("#name").FillAsync("Island school");
        await page.Locator("form button").ClickAsync();
        await page.HeadedAsync("Island school");
        await page.HoldBothAsync("app-empty-shed", _faults);

        await page.GetByRole(AriaRole.Link, new() { Name = "Add a boat" }).ClickAsync();
        await page.HeadedAsync("boat");
        await page.HoldBothAsync("app-boat-new", _faults);
        foreach (string place in (string[])["Jobs", "Report", "Round"])
        {
            await page.PlaceAsync(place);
            await page.SettledAsync();
            await page.HoldBothAsync("app-empty-" + place.ToLowerInvariant(), _faults);
        }

        await page.GotoAsync("/app/nowhere");
        await page.HeadedAsync("Nothing here");
        await page.HoldBothAsync("app-nowhere", _faults);
        Assert.Empty(device.Complaints);
        Assert.True(_faults.Count == 0, string.Join('\n', _faults));
    }
}
