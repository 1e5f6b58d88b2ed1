using System.Globalization;
using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Tests.World;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Keeping;

/// <summary>A club that cannot be let go of is told to be here still, and the page stays.</summary>
public sealed class ClubsHereTests
{
    public ClubsHereTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task What_this_device_could_not_let_go_of_is_told_and_can_be_tried_again()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        string other = (await club.Device.StartClubAsync("Weir Side")).Held.Club;
        NavigationManager navigation = club.Page.Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo("settings");
        IRenderedComponent<ClubsHere> page = club.Page.Render<ClubsHere>();
        await page.PressAsync($"[id='let-go-{other}']");
        page.WaitForElement("#let-go-no");

        club.Shelf.LettingGo = () => throw new ShelfException(ShelfFault.Damaged, "torn");
        await page.PressAsync(".held .main");
        Assert.EndsWith("settings", navigation.Uri, StringComparison.Ordinal);
        Assert.Contains("Not kept", page.Find(".held").TextContent, StringComparison.Ordinal);
        Assert.Contains(club.Device.Clubs, c => c.Club == other);

        club.Shelf.LettingGo = null;
        await page.PressAsync(".held .main");
        Assert.DoesNotContain(club.Device.Clubs, c => c.Club == other);
        Assert.EndsWith("/", navigation.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_club_that_was_handed_over_is_no_longer_in_hand_though_something_small_of_it_is_still_here()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        ThisDevice device = club.Page.Services.GetRequiredService<ThisDevice>();
        await device.StartClubAsync("Weir Side");
        await club.Device.SetAsync(club.InHand.Held.Club, "round", "kept");
        NavigationManager navigation = club.Page.Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo("settings");
        IRenderedComponent<ClubsHere> page = club.Page.Render<ClubsHere>();
        await page.PressAsync("#hand-over-do");

        int writes = 0;
        club.Shelf.Writing = () => ++writes > 1 ? throw new ShelfException(ShelfFault.Full, "No more room.") : Task.CompletedTask;
        await page.PressAsync(".held .main");

        Assert.Equal("c", club.InHand.Held.Club);
        Assert.EndsWith("/", navigation.Uri, StringComparison.Ordinal);
    }

    /// <summary>What would be recorded in a club that is gone would be kept nowhere.</summary>
    [Fact]
    public async Task A_club_that_is_gone_is_no_longer_in_hand_though_something_small_of_it_is_still_here()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        string other = (await club.Device.StartClubAsync("Weir Side")).Held.Club;
        await club.Device.SetAsync("c", "round", "kept");
        club.Shelf.IsFull = true;

        await Assert.ThrowsAsync<ShelfException>(() => club.Page.Services.GetRequiredService<ThisDevice>().LetGoAsync("c"));

        Assert.Equal(other, club.InHand.Held.Club);
    }
}
