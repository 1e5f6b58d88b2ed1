using System.Globalization;
using Bunit;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Round;

/// <summary>The boats of a round are found by the labels of what belongs to them, and how they are read is kept.</summary>
public sealed class ChoosePageTests
{
    public ChoosePageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData("https://gates.example/app/racks/lower", "Heron", 0, true)]
    [InlineData("https://gates.example/app/oars/oar-3", "Teal", 0, true)]
    [InlineData("https://gates.example/app/boat/teal", "Teal", 1, true)]
    [InlineData("https://gates.example/app/oars/oar-9", null, 0, false)]
    public async Task What_the_camera_reads_off_a_label_shows_its_boats_and_picks_the_one_it_names(string code, string? boat, int picked, bool isKnown)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Set(Things.Rack, "lower", ("name", "Lower")),
            Set(Things.Boat, "heron", ("name", "Heron"), ("class", "1x"), ("rack", "lower")),
            Set(Things.Boat, "teal", ("name", "Teal"), ("class", "2-")),
            Set(Things.Oar, "oar-3", ("name", "Red 3"), ("boat", "teal")));
        IRenderedComponent<ChoosePage> page = club.Page.Render<ChoosePage>();
        page.WaitForElement("#search");

        await page.InvokeAsync(() => page.FindComponent<ScanCode>().Instance.Found(code));

        // A code that is nobody's here takes no boat off the list.
        Assert.Equal(boat is null ? ["Heron", "Teal"] : [boat], page.FindAll(".rack .what > span:first-child").Select(n => n.TextContent.Split(' ')[0]));
        Assert.Equal(picked, page.FindAll(".rack input[checked]").Count);
        Assert.Equal(isKnown, page.FindAll("[role=alert]").Count == 0);
    }

    [Fact]
    public async Task A_station_that_cannot_be_kept_goes_back_with_a_word_why()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Set(Things.Boat, "teal", ("name", "Teal"), ("class", "2-")));
        IRenderedComponent<ChoosePage> page = club.Page.Render<ChoosePage>();
        page.WaitForElement(".stations");
        bool[] before = Stations();
        int other = Array.IndexOf(before, false);
        var disk = new TaskCompletionSource();
        (club.Shelf.IsFull, club.Shelf.Writing) = (true, () => disk.Task);

        Task tapped = page.ChooseAsync(".stations input", true, other);
        await page.InvokeAsync(() => { });
        Assert.True(Stations()[other]);
        disk.SetResult();
        await tapped;

        Assert.NotEmpty(page.Find("[role=alert]").TextContent);
        Assert.Equal(before, Stations());

        bool[] Stations() => [.. page.FindAll(".stations input").Select(i => i.HasAttribute("checked"))];
    }

    private static ThingSet Set(string thing, string key, params (string Field, string Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => (string?)f.Value));
}
