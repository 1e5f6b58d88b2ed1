using System.Globalization;
using Bunit;
using Gatewright.App.Keeping.Gauges;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Tests.World;

namespace Gatewright.App.Tests.Device;

/// <summary>What an exchange hears of the member here is on the screen at once, though it brings no entry.</summary>
public class StandsOtherwiseTests
{
    public StandsOtherwiseTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Another_role_is_offered_what_it_may_do()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("crew");
        IRenderedComponent<GaugesPage> page = club.Page.Render<GaugesPage>();
        Assert.Empty(page.FindAll("a[href='gauges/new']"));

        await page.InvokeAsync(() => HearAsync(club, "helper"));

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

        await page.InvokeAsync(() => HearAsync(club, "keeper", "Weir Side"));

        page.WaitForAssertion(() => Assert.Contains("Weir Side", page.FindAll("li.club")[1].TextContent, StringComparison.Ordinal));
    }

    /// <summary>A start hears what was known, and clubs beside the one that is open: no page is drawn once more for that.</summary>
    [Fact]
    public async Task What_changes_nothing_for_the_member_here_draws_nothing()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<GaugesPage> page = club.Page.Render<GaugesPage>();
        int drawn = page.RenderCount;
        int said = 0;
        club.InHand.StandsOtherwise += () => said++;
        club.InHand.Changed += () => said++;

        await page.InvokeAsync(() => HearAsync(club, "keeper"));
        await page.InvokeAsync(() => HearAsync(club, "keeper", "Weir Side"));

        Assert.Equal((drawn, 0), (page.RenderCount, said));
    }

    [Fact]
    public async Task What_was_chosen_and_not_kept_yet_stays()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<GaugePage> page = club.Page.Render<GaugePage>(p => p.Add(g => g.Key, "new"));
        await page.TypeAsync("#name", "Dial");

        await page.InvokeAsync(() => HearAsync(club, "coach"));

        Assert.Equal("Dial", page.Find("#name").GetAttribute("value"));
    }

    private static Task HearAsync(ClubOfTwo club, string role, string? beside = null) => club.Device.JoinAsync(new(
        "ada",
        "Ada",
        [new("c", "Heron Rowing", "m-ada", role), .. beside is null ? [] : new Replica.Exchanging.SessionClub[] { new("d", beside, "m-ada", "crew") }],
        "token"));
}
