using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Reporting;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace Gatewright.App.Tests.Device;

/// <summary>A photo is made small, kept, and stays with the gate it was taken of, on whichever page.</summary>
public class PhotosTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(EntryRules.LargestPhoto + 1)]
    public async Task What_is_no_picture_or_stays_too_large_is_not_taken(int length)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        Picture(club, new byte[length]);

        await Assert.ThrowsAsync<PhotoException>(() => club.Page.Services.GetRequiredService<Photos>().TakeAsync(default));
    }

    [Fact]
    public async Task What_the_browser_cannot_read_is_not_taken()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Page.JSInterop.SetupModule("./photo.js").Setup<byte[]?>("picture", _ => true).SetException(new JSException("The source image could not be decoded."));

        await Assert.ThrowsAsync<PhotoException>(() => club.Page.Services.GetRequiredService<Photos>().TakeAsync(default));
    }

    [Fact]
    public async Task Where_none_was_chosen_there_is_none()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        Picture(club, null);

        Assert.Null(await club.Page.Services.GetRequiredService<Photos>().TakeAsync(default));
    }

    [Fact]
    public async Task A_reports_photo_and_note_are_of_the_gate_that_was_touched()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }));
        Picture(club, [1, 2, 3]);
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("report?boat=teal");
        IRenderedComponent<ReportPage> page = club.Page.Render<ReportPage>();

        await page.PressAsync("#what-Damage");
        await page.PressAsync(".gw-place");
        await page.ChooseAsync("input[type=file]", null);
        await page.PressAsync("#send");

        page.WaitForElement("#take-back");
        PhotoTaken photo = Assert.Single(club.InHand.Club.All().Select(r => r.Fact).OfType<PhotoTaken>());
        Noted note = Assert.Single(club.InHand.Club.All().Select(r => r.Fact).OfType<Noted>());
        Assert.Equal(Things.Gate, photo.Thing);
        Assert.Equal("teal/1/starboard", photo.Key);
        Assert.Equal((photo.Thing, photo.Key), (note.Thing, note.Key));
        Assert.Equal(3, photo.Bytes);
    }

    private static void Picture(ClubOfTwo club, byte[]? picture) =>
        club.Page.JSInterop.SetupModule("./photo.js").Setup<byte[]?>("picture", _ => true).SetResult(picture);
}
