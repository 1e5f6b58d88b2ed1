using System.Globalization;
using Bunit;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Tests.SharingPages;

/// <summary>Room is made of what the server has too, and of nothing else.</summary>
public sealed class MakeRoomTests
{
    public MakeRoomTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Photos_that_were_sent_go_when_asked_twice_and_the_others_stay()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        string sent = await club.Device.AddPhotoAsync("c", new byte[1_500_000], "image/jpeg");
        await club.Shelf.PhotoSentAsync("c", sent);
        string unsent = await club.Device.AddPhotoAsync("c", new byte[] { 1 }, "image/jpeg");
        IRenderedComponent<MakeRoom> page = club.Page.Render<MakeRoom>();
        Assert.Contains("1.5 MB (1 photo)", page.Markup, StringComparison.Ordinal);

        await page.PressAsync(".clear-photos");
        Assert.NotNull(await club.Device.PhotoAsync("c", sent));
        await page.PressAsync(".held button.main");

        Assert.Null(await club.Device.PhotoAsync("c", sent));
        Assert.NotNull(await club.Device.PhotoAsync("c", unsent));
        Assert.NotEmpty(page.Find("[role=status]").TextContent);
    }

    [Fact]
    public async Task What_cannot_be_fetched_again_is_not_offered()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.Shelf.PutPhotoAsync("c", new KeptPhoto(new string('0', 64), "image/jpeg", new byte[] { 1 }, IsUnsent: false));
        await club.LeaveAsync();

        Assert.Empty(club.Page.Render<MakeRoom>().FindAll("button"));
    }
}
