using System.Globalization;
using Bunit;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.SharingPages;

/// <summary>Nobody signs out without being told what is not shared yet.</summary>
public sealed class SignOutTests
{
    private readonly SharedClub _server = new();

    public SignOutTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Where_all_is_shared_one_touch_does()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _server.Answer);
        IRenderedComponent<SignOutAsked> page = club.Page.Render<SignOutAsked>();

        await page.PressAsync(".sign-out");

        Assert.Equal(1, _server.SignedOut);
    }

    [Fact]
    public async Task What_is_not_shared_is_told_first_with_what_becomes_of_it()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _server.Answer);
        await club.InHand.RecordAsync(new Held("teal", "knock"));
        await club.Device.AddPhotoAsync("c", new byte[] { 1 }, "image/jpeg");
        IRenderedComponent<SignOutAsked> page = club.Page.Render<SignOutAsked>();

        await page.PressAsync(".sign-out");
        Assert.Equal(0, _server.SignedOut);
        Assert.Contains("1 entry and 1 photo", page.Find(".held").TextContent, StringComparison.Ordinal);
        Assert.Contains("stays on this device", page.Find(".held").TextContent, StringComparison.Ordinal);

        await page.PressAsync(".held button", 1);
        Assert.Equal(1, _server.SignedOut);
        Assert.Single(club.InHand.Copy.NotShared);
        Assert.Single(await club.Device.UnsentPhotosAsync("c"));
    }

    [Fact]
    public async Task Shared_first_it_signs_out_by_itself()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _server.Answer);
        await SharedClub.ShareAsync(club);
        await club.Device.AddPhotoAsync("c", new byte[] { 1 }, "image/jpeg");
        IRenderedComponent<SignOutAsked> page = club.Page.Render<SignOutAsked>();
        await page.PressAsync(".sign-out");

        await page.PressAsync(".held button.main");

        page.WaitForAssertion(() => Assert.Equal(1, _server.SignedOut));
        Assert.Empty(await club.Device.UnsentPhotosAsync("c"));
    }

    [Fact]
    public async Task What_could_not_be_shared_leaves_one_signed_in_and_is_told()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _server.Answer);
        await SharedClub.ShareAsync(club);
        await club.InHand.RecordAsync(new Held("teal", "knock"));
        IRenderedComponent<SignOutAsked> page = club.Page.Render<SignOutAsked>();
        await page.PressAsync(".sign-out");

        await page.PressAsync(".held button.main");

        page.WaitForAssertion(() => Assert.Contains("Not all of it", page.Find("p.wrong").TextContent, StringComparison.Ordinal));
        Assert.Equal(0, _server.SignedOut);
    }
}
