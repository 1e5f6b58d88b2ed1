using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>The screens of a boat's rig and of what stands round it, and of the oars, as one comes to them by their links.</summary>
internal sealed class RigScreens(IPage page, List<string> faults, Daylight light)
{
    // Invented for the demo: examples/README.md tells the truth about Dunlin, whose seat 3 is wider than its neighbours.
    private const string Boat = "Dunlin";

    /// <summary>From the shed through everything that a boat's page leads to.</summary>
    public async Task OfBoatAsync()
    {
        await page.PlaceAsync("Shed");
        await page.GetByRole(AriaRole.Link, new() { Name = Boat }).First.ClickAsync();
        await page.HeadedAsync(Boat);
        await MeasureAsync();
        await GoAsync("stroke", ".lab");
        await GoAsync("water", "#roll-title");
        await ChooseAsync("change", "#to", "crew:women", "#plan-head");
        await ChooseAsync("compare", "#with", "boat:meltemi", "#compared-head");
        await GoAsync("travel", ".steps");
        await KeepChangeAsync();
    }

    /// <summary>One oar, how it is changed, and a set on the gunwale.</summary>
    public async Task OfOarsAsync()
    {
        await page.PlaceAsync("More");
        await FollowAsync("oars", "main .sets");
        await FollowAsync("oars/set/alluvium", "main table");
        await FollowAsync("oars/alluvium-5", "#facts");
        await HoldAsync("oar");
        await FollowAsync("oars/alluvium-5/edit", "#inboard");
        await HoldAsync("oar-edit");
        await page.GoBackAsync();
        await FollowAsync("oars/read?set=alluvium&oar=alluvium-5", ".setup");
        await HoldAsync("gunwale-begun");
        await page.Locator(".setup button.main").ClickAsync();
        await page.Locator("#pad").WaitForAsync();
        await page.Locator("#pad [data-value='3.0']").ClickAsync();
        await HoldAsync("gunwale");
    }

    /// <summary>Spreads alone, one of them far off its target.</summary>
    private async Task MeasureAsync()
    {
        await FollowAsync("boat/dunlin/rig/measure", "#begin-measuring");
        await page.Locator("#measure-height").UncheckAsync();
        await HoldAsync("measure-begun");
        await page.Locator("#begin-measuring").ClickAsync();
        await page.Locator("#pad").WaitForAsync();
        await page.TapAsync(85);
        await page.TapAsync(80.5m);
        await HoldAsync("measure");
        await page.Locator("#more").ClickAsync();
        await page.Locator("#close-more").WaitForAsync();
        await HoldAsync("measure-more");
        await page.Locator("#close-more").ClickAsync();
        await page.ReadAllAsync(_ => 85);
        await HoldAsync("measure-story");
        await page.Locator("#end-measuring").ClickAsync();
        await page.Locator("#rig-whole").WaitForAsync();
        await page.Locator("section[aria-labelledby=m-spread] > details > summary").Last.ClickAsync();
        await HoldAsync("rig");
        await BackAsync();
    }

    /// <summary>A change put among the jobs, its first step done.</summary>
    private async Task KeepChangeAsync()
    {
        await FollowAsync("boat/dunlin/change", "#to");
        await page.Locator("#to").SelectOptionAsync("crew:women");
        await page.Locator("#keep-change").ClickAsync();
        await page.Locator("main .again").WaitForAsync();
        await page.Locator("main .steps input").First.ClickAsync();
        await page.Locator("main .steps .done").First.WaitForAsync();
        await HoldAsync("change-kept");
    }

    private async Task ChooseAsync(string what, string choice, string chosen, string shows)
    {
        await FollowAsync("boat/dunlin/" + what, choice);
        await page.Locator(choice).SelectOptionAsync(chosen);
        await page.Locator(shows).WaitForAsync();
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
        await page.Locator($"main a[href='{link}']").First.ClickAsync();
        await page.Locator(shows).First.WaitForAsync();
        await page.SettledAsync();
    }

    private async Task BackAsync()
    {
        await page.Locator(".back a").ClickAsync();
        await page.HeadedAsync(Boat);
    }

    private async Task HoldAsync(string name)
    {
        await page.SettledAsync();
        await page.HoldBothAsync("app-" + name, faults, light);
    }
}
