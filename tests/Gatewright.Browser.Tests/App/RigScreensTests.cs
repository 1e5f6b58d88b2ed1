using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>The screens of a boat's rig and of what stands round it, and of the oars, as one comes to them by their links.</summary>
public sealed class RigScreensTests(Chromium chromium)
{
    // Invented for the demo: examples/README.md tells the truth about Dunlin, whose seat 3 is wider than its neighbours.
    private const string Boat = "Dunlin";
    private readonly List<string> _faults = [];
    private Daylight _light;
    private IPage _page = null!;

    [Fact]
    public Task A_rigs_screens_can_be_seen_touched_and_heard_on_a_phone() => SeeAsync(DeviceShape.Phone, Daylight.Day);

    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public Task A_rigs_screens_can_be_read_at_dusk_on_a_phone() => SeeAsync(DeviceShape.Phone, Daylight.Dusk);

    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public Task A_rigs_screens_can_be_seen_touched_and_heard_at_a_desk() => SeeAsync(DeviceShape.Desk, Daylight.Both);

    private async Task SeeAsync(DeviceShape shape, Daylight light)
    {
        _light = light;
        await using AppSite site = await AppSite.StartAsync();
        await using Device device = await Device.InShedAsync(site.Address, chromium, shape);
        _page = device.Page;
        await OfBoatAsync();
        await OfOarsAsync();
        Assert.Empty(device.Complaints);
        Assert.True(_faults.Count == 0, string.Join('\n', _faults));
    }

    /// <summary>From the shed through everything that a boat's page leads to.</summary>
    private async Task OfBoatAsync()
    {
        await _page.GetByRole(AriaRole.Link, new() { Name = Boat }).First.ClickAsync();
        await _page.HeadedAsync(Boat);
        await MeasureAsync();
        await GoAsync("stroke", ".lab");
        await GoAsync("water", "#roll-title");
        await ChooseAsync("change", "#to", "crew:women", "#plan-head");
        await ChooseAsync("compare", "#with", "boat:meltemi", "#compared-head");
        await GoAsync("travel", ".steps");
        await KeepChangeAsync();
    }

    /// <summary>One oar, how it is changed, and a set on the gunwale.</summary>
    private async Task OfOarsAsync()
    {
        await _page.PlaceAsync("More");
        await FollowAsync("oars", "main .sets");
        await FollowAsync("oars/set/alluvium", "main table");
        await FollowAsync("oars/alluvium-5", "#facts");
        await HoldAsync("oar");
        await FollowAsync("oars/alluvium-5/edit", "#inboard");
        await HoldAsync("oar-edit");
        await _page.GoBackAsync();
        await FollowAsync("oars/read?set=alluvium&oar=alluvium-5", ".setup");
        await HoldAsync("gunwale-begun");
        await _page.Locator(".setup button.main").ClickAsync();
        await _page.Locator("#pad").WaitForAsync();
        await _page.Locator("#pad [data-value='3.0']").ClickAsync();
        await HoldAsync("gunwale");
    }

    /// <summary>Spreads alone, one of them far off its target.</summary>
    private async Task MeasureAsync()
    {
        await FollowAsync("boat/dunlin/rig/measure", "#begin-measuring");
        await _page.Locator("#measure-height").UncheckAsync();
        await HoldAsync("measure-begun");
        await _page.Locator("#begin-measuring").ClickAsync();
        await _page.Locator("#pad").WaitForAsync();
        await _page.TapAsync(85);
        await _page.TapAsync(80.5m);
        await HoldAsync("measure");
        await _page.Locator("#more").ClickAsync();
        await _page.Locator("#close-more").WaitForAsync();
        await HoldAsync("measure-more");
        await _page.Locator("#close-more").ClickAsync();
        await _page.ReadAllAsync(_ => 85);
        await HoldAsync("measure-story");
        await _page.Locator("#end-measuring").ClickAsync();
        await _page.Locator("#rig-whole").WaitForAsync();
        await _page.Locator("section[aria-labelledby=m-spread] > details > summary").Last.ClickAsync();
        await HoldAsync("rig");
        await BackAsync();
    }

    /// <summary>A change put among the jobs, its first step done.</summary>
    private async Task KeepChangeAsync()
    {
        await FollowAsync("boat/dunlin/change", "#to");
        await _page.Locator("#to").SelectOptionAsync("crew:women");
        await _page.Locator("#keep-change").ClickAsync();
        await _page.Locator("main .again").WaitForAsync();
        await _page.Locator("main .steps input").First.ClickAsync();
        await _page.Locator("main .steps .done").First.WaitForAsync();
        await HoldAsync("change-kept");
    }

    private async Task ChooseAsync(string what, string choice, string chosen, string shows)
    {
        await FollowAsync("boat/dunlin/" + what, choice);
        await _page.Locator(choice).SelectOptionAsync(chosen);
        await _page.Locator(shows).WaitForAsync();
        await HoldAsync(what);
        await BackAsync();
    }

    private async Task GoAsync(string what, string shows)
    {
        await FollowAsync("boat/dunlin/" + what, shows);
        await HoldAsync("boat-" + what);
        await BackAsync();
    }

    private async Task FollowAsync(string link, string shows)
    {
        await _page.Locator($"main a[href='{link}']").First.ClickAsync();
        await _page.Locator(shows).First.WaitForAsync();
        await _page.SettledAsync();
    }

    private async Task BackAsync()
    {
        await _page.Locator(".back a").ClickAsync();
        await _page.HeadedAsync(Boat);
    }

    private async Task HoldAsync(string name)
    {
        await _page.SettledAsync();
        await _page.HoldBothAsync("app-" + name, _faults, _light);
    }
}
