using System.Globalization;
using Bunit;
using Gatewright.App.Keeping.Gauges;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Tests.World;

namespace Gatewright.App.Tests.Device;

/// <summary>What an exchange hears of the member here is on the screen at once, though it brings no entry.</summary>
public class HeardAnewTests
{
    public HeardAnewTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Another_role_is_offered_what_it_may_do()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("crew");
        IRenderedComponent<GaugesPage> page = club.Page.Render<GaugesPage>();
        Assert.Empty(page.FindAll("a[href='gauges/new']"));

        await page.InvokeAsync(() => club.Device.JoinAsync(new("ada", "Ada", [new("c", "Heron Rowing", "m-ada", "helper")], "token")));

        page.WaitForAssertion(() => Assert.Single(page.FindAll("a[href='gauges/new']")));
        await page.InvokeAsync(club.LeaveAsync);
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("a[href='gauges/new']")));
    }

    [Fact]
    public async Task A_club_just_joined_is_among_the_clubs_here()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<ClubsHere> page = club.Page.Render<ClubsHere>();
        Assert.Single(page.FindAll("li.club"));

        await page.InvokeAsync(() => club.Device.JoinAsync(new(
            "ada", "Ada", [new("c", "Heron Rowing", "m-ada", "keeper"), new("d", "Weir Side", "m-ada", "crew")], "token")));

        page.WaitForAssertion(() => Assert.Contains("Weir Side", page.FindAll("li.club")[1].TextContent, StringComparison.Ordinal));
    }
}
