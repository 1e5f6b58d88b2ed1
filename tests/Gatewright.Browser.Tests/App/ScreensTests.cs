using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>Every screen of the app, on a phone and at a desk, by day and at dusk, as one comes to it by its links.</summary>
public sealed class ScreensTests(Chromium chromium)
{
    private readonly List<string> _faults = [];
    private Daylight _light;

    [Fact]
    public Task Every_screen_can_be_seen_touched_and_heard_on_a_phone() => SeeAsync(isPhone: true, Daylight.Day);

    /// <summary>The same screens in their other colours, whose contrasts are held one by one beside (App.Tests, Look).</summary>
    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public Task Every_screen_can_be_read_at_dusk_on_a_phone() => SeeAsync(isPhone: true, Daylight.Dusk);

    /// <summary>The pages are the same, laid out otherwise: the walk takes a minute.</summary>
    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public Task Every_screen_can_be_seen_touched_and_heard_at_a_desk() => SeeAsync(isPhone: false, Daylight.Both);

    private async Task SeeAsync(bool isPhone, Daylight light)
    {
        _light = light;
        await using AppSite site = await AppSite.StartAsync();
        await using Device device = await Device.StartAsync(site.Address, chromium, isPhone ? DeviceShape.Phone : DeviceShape.Desk);
        IPage page = device.Page;
        await page.GotoAsync("/app/");
        await page.Locator("#name").WaitForAsync();
        await page.HoldBothAsync("app-welcome", _faults, _light);
        await device.WalkInAsync();
        await page.SettledAsync();
        await page.HoldBothAsync("app-shed", _faults, _light);

        await RoundAsync(page);
        await BoatAsync(page);
        await JobAsync(page);
        await ReportAsync(page);
        await MoreAsync(page);
        Assert.Empty(device.Complaints);
        Assert.True(_faults.Count == 0, string.Join('\n', _faults));
    }

    private async Task RoundAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Start a round" }).ClickAsync();
        await page.HeadedAsync("Round");
        await page.SettledAsync();
        await page.HoldBothAsync("app-round", _faults, _light);
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "Rowan" }).CheckAsync();
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "Bittern" }).CheckAsync();
        await page.Locator("#begin").ClickAsync();
        await page.HeadedAsync("Bittern");
        await page.Locator("#pad").WaitForAsync();
        await page.HoldBothAsync("app-reading-begun", _faults, _light);
        await page.Locator("#more").ClickAsync();
        await page.Locator("#close-more").WaitForAsync();
        await page.HoldBothAsync("app-reading-more", _faults, _light);
        await page.Locator("#change-lie").ClickAsync();
        await page.Locator("#lay").WaitForAsync();
        await page.HoldBothAsync("app-reading-lies", _faults, _light);
        await page.Locator("#lay").ClickAsync();

        // One that is far off: it is asked whether it is a slip, and taken back.
        string first = await page.NowAsync();
        await page.Locator("#typed").FillAsync("16");
        await page.Locator("#record-typed").ClickAsync();
        await page.Locator("#keep").WaitForAsync();
        await page.HoldBothAsync("app-reading-slip", _faults, _light);
        await page.Locator("#undo").ClickAsync();
        await Assertions.Expect(page.Locator(".now b")).ToHaveTextAsync(first);
        await page.TapAsync(4);
        await page.Locator("#typed").FillAsync("4.3");
        await page.Locator("#record-typed").WaitForAsync();
        await page.HoldBothAsync("app-reading-typed", _faults, _light);
        await page.Locator("#record-typed").ClickAsync();
        await page.TapAsync(4);
        await page.TapAsync(3.5m);
        await page.SettledAsync();
        await page.HoldBothAsync("app-reading", _faults, _light);
        await page.ReadAllAsync(place => place.StartsWith("5 starboard", StringComparison.Ordinal) ? 2.5m : 4);
        await page.SettledAsync();
        await page.HoldBothAsync("app-story", _faults, _light);
        await page.Locator("#done").ClickAsync();
        await page.HeadedAsync("The round is done");
        await page.HoldBothAsync("app-summary", _faults, _light);
        await page.Locator("#to-shed").ClickAsync();
        await page.HeadedAsync("The demo shed");
    }

    private async Task BoatAsync(IPage page)
    {
        // Invented for the demo: examples/README.md tells the truth about Nuthatch, whose blade may dive.
        await page.GetByRole(AriaRole.Link, new() { Name = "Nuthatch" }).First.ClickAsync();
        await page.HeadedAsync("Nuthatch");
        await page.SettledAsync();
        await page.HoldBothAsync("app-boat", _faults, _light);
        await page.Locator(".gw-place.gw-starboard").Nth(1).ClickAsync();
        await page.HeadedAsync("2 starboard");
        await page.SettledAsync();
        await page.HoldBothAsync("app-gate", _faults, _light);
        await page.GoBackAsync();
        await page.HeadedAsync("Nuthatch");
        await page.SettledAsync();
    }

    private async Task JobAsync(IPage page)
    {
        await page.Locator("main a[href^='job/new']").First.ClickAsync();
        await page.HeadedAsync("2 starboard");
        await page.Locator("#plan").WaitForAsync();
        await page.HoldBothAsync("app-job-new", _faults, _light);
        await page.Locator("#plan").ClickAsync();
        await page.HeadedAsync("Nuthatch: ");
        await page.SettledAsync();
        await page.HoldBothAsync("app-job", _faults, _light);
        await page.PlaceAsync("Jobs");
        await page.SettledAsync();
        await page.HoldBothAsync("app-jobs", _faults, _light);
        await page.Locator("#open-list a").First.ClickAsync();
        await page.HeadedAsync("Nuthatch: ");
        await page.Locator("#recheck").ClickAsync();
        await page.Locator("#pad").WaitForAsync();
        await page.SettledAsync();
        ILocator read = page.Locator(".stations b");
        for (int i = 0; i < await read.CountAsync(); i++)
        {
            await page.Locator("#pad [data-value='4.0']").ClickAsync();
            await Assertions.Expect(read.Nth(i)).Not.ToHaveTextAsync("–");
        }

        await page.HoldBothAsync("app-recheck", _faults, _light);
        await page.Locator("#to-job").ClickAsync();
        await page.HeadedAsync("Nuthatch: ");
        await page.SettledAsync();
        await page.HoldBothAsync("app-job-read", _faults, _light);
        await page.Locator("#close").ClickAsync();
        await Assertions.Expect(page.GetByText("Finished ")).ToBeVisibleAsync();
        await page.SettledAsync();
        await page.HoldBothAsync("app-job-closed", _faults, _light);
    }

    private async Task ReportAsync(IPage page)
    {
        await page.PlaceAsync("Report");
        await page.HoldBothAsync("app-report-boat", _faults, _light);
        await page.GetByRole(AriaRole.Button, new() { Name = "Hornbeam" }).ClickAsync();
        await page.Locator(".kinds").WaitForAsync();
        await page.HoldBothAsync("app-report-what", _faults, _light);
        await page.Locator(".kind").First.ClickAsync();
        await page.Locator("#where-nowhere").WaitForAsync();
        await page.HoldBothAsync("app-report-where", _faults, _light);
        await page.Locator(".gw-place").Nth(2).ClickAsync();
        await page.Locator("#send").WaitForAsync();
        await page.HoldBothAsync("app-report-send", _faults, _light);
        await page.Locator("#send").ClickAsync();
        await page.Locator("#send").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await page.SettledAsync();
        await page.HoldBothAsync("app-report-sent", _faults, _light);
    }

    private async Task MoreAsync(IPage page)
    {
        await page.PlaceAsync("More");
        await page.HoldBothAsync("app-more", _faults, _light);
        List<string> places = [.. await page.Locator("main li a").EvaluateAllAsync<string[]>("all => all.map(a => a.getAttribute('href'))")];
        Assert.NotEmpty(places);
        foreach (string place in places)
        {
            await page.PlaceAsync("More");
            await page.Locator($"main li a[href='{place}']").ClickAsync();
            await page.Locator($"main li a[href='{place}']").WaitForAsync(new() { State = WaitForSelectorState.Detached });
            await page.SettledAsync();
            await page.HoldBothAsync("app-" + place, _faults, _light);

            // The first of what is listed there, such as one rack of the racks.
            ILocator first = page.Locator($"main a[href^='{place}/']:not([href$='/new'])").First;
            if (await first.CountAsync() > 0)
            {
                string one = (await first.GetAttributeAsync("href"))!;
                await first.ClickAsync();
                await page.Locator($"main a[href='{one}']").First.WaitForAsync(new() { State = WaitForSelectorState.Detached });
                await page.SettledAsync();
                await page.HoldBothAsync($"app-{place}-one", _faults, _light);
            }
        }
    }
}
