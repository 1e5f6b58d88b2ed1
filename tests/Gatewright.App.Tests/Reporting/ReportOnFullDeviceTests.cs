using System.Globalization;
using Bunit;
using Gatewright.App.Reporting;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Reporting;

/// <summary>A photo that finds no room takes no words with it.</summary>
public sealed class ReportOnFullDeviceTests
{
    public ReportOnFullDeviceTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task The_words_and_the_hold_are_on_record_and_the_photo_is_told_as_lost()
    {
        await using ClubOfTwo club = await StartAsync();
        club.Shelf.IsFullOfPhotos = true;
        IRenderedComponent<ReportPage> page = await ReportAsync(club);

        page.WaitForElement("#take-back");
        Assert.Single(club.InHand.Club.All().Select(r => r.Fact).OfType<Noted>());
        Assert.Empty(club.InHand.Club.All().Select(r => r.Fact).OfType<PhotoTaken>());
        Assert.Contains("Its photo is not", page.Find(".held[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Once_there_is_room_the_photo_is_kept_after_all_and_taken_back_with_the_report()
    {
        await using ClubOfTwo club = await StartAsync();
        club.Shelf.IsFullOfPhotos = true;
        IRenderedComponent<ReportPage> page = await ReportAsync(club);
        page.WaitForElement("#photo-again");
        club.Shelf.IsFullOfPhotos = false;

        await page.PressAsync("#photo-again");

        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#photo-again")));
        Assert.Equal("#sent", ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!).First(p => page.FindAll(p).Count > 0));
        Assert.Contains("#photo-again", (string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!);
        PhotoTaken photo = Assert.Single(club.InHand.Club.All().Select(r => r.Fact).OfType<PhotoTaken>());
        Assert.Equal("teal/1/starboard", photo.Key);
        await page.PressAsync("#take-back");
        Assert.All(
            club.InHand.Club.All().Where(r => r.Fact is PhotoTaken or Noted),
            r => Assert.True(club.InHand.Club.IsRetracted(r)));
    }

    /// <summary>A browser takes the focus off a button that cannot be pressed: where nothing is recorded, it would be lost.</summary>
    [Fact]
    public async Task While_a_report_is_recorded_its_button_stays_and_a_second_press_is_the_same_once_more()
    {
        await using ClubOfTwo club = await StartAsync();
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("report?boat=teal");
        IRenderedComponent<ReportPage> page = club.Page.Render<ReportPage>();
        await page.PressAsync("#what-Knock");
        await page.PressAsync(".gw-place");
        var disk = new TaskCompletionSource();
        club.Shelf.Writing = () => disk.Task;

        Task first = page.PressAsync("#send");
        page.Render();
        Assert.False(page.Find("#send").HasAttribute("disabled"));
        Task second = page.PressAsync("#send");
        disk.SetResult();
        await Task.WhenAll(first, second);

        Assert.Single(club.InHand.Club.All(), r => r.Fact is Reported);
    }

    [Fact]
    public async Task A_photo_whose_record_finds_no_room_does_not_take_the_last_of_it()
    {
        await using ClubOfTwo club = await StartAsync();

        // The words find room, and the picture; then there is none.
        club.Shelf.Writing = async () => club.Shelf.IsFull = (await club.Device.UnsentPhotosAsync("c")).Count > 0;
        IRenderedComponent<ReportPage> page = await ReportAsync(club);

        page.WaitForElement("#photo-again");
        Assert.Single(club.InHand.Club.All().Select(r => r.Fact).OfType<Noted>());
        Assert.Empty(await club.Device.UnsentPhotosAsync("c"));
    }

    [Fact]
    public async Task What_was_written_of_one_boat_does_not_go_with_another()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<ReportPage> page = await DraftAsync(club);

        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("report?boat=merlin");
        page.WaitForAssertion(() => Assert.Contains("Merlin", page.Find(".chosen").TextContent, StringComparison.Ordinal));
        await ChooseAsync(page);

        Assert.DoesNotContain("Photo added", page.Markup, StringComparison.Ordinal);
    }

    private static async Task<ClubOfTwo> StartAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Boat("teal", "Teal"), Boat("merlin", "Merlin"));
        club.Page.JSInterop.SetupModule("./photo.js").Setup<byte[]?>("picture", _ => true).SetResult([1, 2, 3]);
        return club;
    }

    private static ThingSet Boat(string key, string name) =>
        new(Things.Boat, key, new Dictionary<string, string?> { ["name"] = name, ["class"] = "2-" });

    private static async Task<IRenderedComponent<ReportPage>> ReportAsync(ClubOfTwo club)
    {
        IRenderedComponent<ReportPage> page = await DraftAsync(club);
        await page.PressAsync("#send");
        return page;
    }

    private static async Task<IRenderedComponent<ReportPage>> DraftAsync(ClubOfTwo club)
    {
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("report?boat=teal");
        IRenderedComponent<ReportPage> page = club.Page.Render<ReportPage>();
        await ChooseAsync(page);
        await page.ChooseAsync("input[type=file]", null);
        return page;
    }

    private static async Task ChooseAsync(IRenderedComponent<ReportPage> page)
    {
        await page.PressAsync("#what-Damage");
        await page.PressAsync(".gw-place");
    }
}
