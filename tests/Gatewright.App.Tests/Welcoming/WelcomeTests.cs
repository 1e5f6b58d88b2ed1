using System.Globalization;
using Bunit;
using Gatewright.App.Tests.World;
using Gatewright.App.Welcoming;

namespace Gatewright.App.Tests.Welcoming;

public sealed class WelcomeTests
{
    public WelcomeTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Two_touches_begin_one_club()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<Welcome> page = club.Page.Render<Welcome>();
        await page.ChooseAsync("#name", "Weir Side");
        var slow = new TaskCompletionSource();
        club.Shelf.Writing = () => slow.Task;

        Task first = page.SendAsync();
        Task second = page.SendAsync();
        slow.SetResult();
        await Task.WhenAll(first, second);

        Assert.Single(club.Device.Clubs, c => c.Name == "Weir Side");
    }

    [Fact]
    public async Task What_this_device_cannot_keep_is_told_and_the_name_stays()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<Welcome> page = club.Page.Render<Welcome>();
        await page.ChooseAsync("#name", "Weir Side");
        club.Shelf.IsFull = true;

        await page.SendAsync();

        Assert.Contains("gives no more room", page.Find("#name-wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal("Weir Side", page.Find("#name").GetAttribute("value"));
    }
}
