using System.Globalization;
using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Rig;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Round;

/// <summary>What somebody has begun to write of a gate is not lost by what the hand does next.</summary>
public sealed class NoteDraftTests
{
    public NoteDraftTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_note_that_was_begun_is_there_again_at_its_gate_and_at_no_other()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<ReadPage> page = Reading(club);
        await WriteAsync(page, "Bolt is lo");

        await page.PressAsync("#more");
        Assert.Equal("Bolt is lo", Written(page));
        await page.PressAsync("#close-more");
        await page.PressAsync("#skip");
        await page.PressAsync("#more");
        Assert.Equal(string.Empty, Written(page));

        IRenderedComponent<ReadPage> later = Reading(club);
        await later.PressAsync("#more");
        Assert.Equal("Bolt is lo", Written(later));
    }

    [Fact]
    public async Task It_is_recorded_with_the_reading_of_its_gate_and_that_is_said()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<ReadPage> page = Reading(club);
        await WriteAsync(page, " Bolt is loose ");

        await page.PressAsync("#pad [data-value='4.0']");

        page.WaitForAssertion(() => Assert.Equal("Note kept.", page.Find(".line .back").TextContent));
        Assert.Contains("Note kept.", page.Find(".hidden-words[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Equal(new Noted(Things.Gate, "teal/2/port", "Bolt is loose"), Assert.Single(Notes(club)));

        await page.PressAsync("#pad [data-value='4.0']");
        page.WaitForAssertion(() => Assert.Equal(2, club.InHand.Club.All().Count(r => r.Fact is ReadingTaken)));
        Assert.Single(Notes(club));
    }

    [Fact]
    public async Task Where_the_reading_finds_no_room_the_note_is_still_there()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<ReadPage> page = Reading(club);
        await WriteAsync(page, "Bolt is loose");

        club.Shelf.IsFull = true;
        await page.PressAsync("#pad [data-value='4.0']");
        page.WaitForElement(".wrong");

        await page.PressAsync("#more");
        Assert.Equal("Bolt is loose", Written(page));
    }

    [Fact]
    public async Task One_that_was_kept_is_not_there_once_more()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<ReadPage> page = Reading(club);
        await page.PressAsync("#more");
        await page.TypeAsync("#note", "Bolt is loose");
        await page.PressAsync("#save-note");
        page.WaitForElement("#more");

        await page.PressAsync("#more");
        Assert.Equal(string.Empty, Written(page));
        await page.PressAsync("#close-more");
        await page.PressAsync("#pad [data-value='4.0']");
        page.WaitForAssertion(() => Assert.Contains(club.InHand.Club.All(), r => r.Fact is ReadingTaken));
        Assert.Single(Notes(club));
    }

    [Fact]
    public async Task While_a_rig_is_measured_it_is_the_same()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<MeasurePage> page = club.Page.Render<MeasurePage>(p => p.Add(r => r.Boat, "teal"));
        await page.SendAsync();
        page.WaitForElement("#more");
        await WriteAsync(page, "Tape is torn");
        await page.PressAsync("#more");
        Assert.Equal("Tape is torn", Written(page));
        await page.PressAsync("#close-more");

        await page.PressAsync("#pad [data-value]");

        page.WaitForAssertion(() => Assert.Contains("Note kept.", page.Find(".line").TextContent, StringComparison.Ordinal));
        Assert.EndsWith("Tape is torn", Assert.Single(Notes(club)).Text, StringComparison.Ordinal);
        await page.PressAsync("#more");
        Assert.Equal(string.Empty, Written(page));
    }

    [Fact]
    public async Task In_another_club_nothing_of_it_is_left()
    {
        await using ClubOfTwo club = await WithTealAsync();
        await WriteAsync(Reading(club), "Bolt is loose");

        await club.Page.Services.GetRequiredService<ThisDevice>().StartClubAsync("Weir Side");

        Assert.Empty(club.InHand.Drafts);
    }

    private static IEnumerable<Noted> Notes(ClubOfTwo club) => club.InHand.Club.All().Select(r => r.Fact).OfType<Noted>();

    private static string? Written<T>(IRenderedComponent<T> page)
        where T : IComponent => page.Find("#note").GetAttribute("value");

    private static async Task WriteAsync<T>(IRenderedComponent<T> page, string note)
        where T : IComponent
    {
        await page.PressAsync("#more");
        await page.TypeAsync("#note", note);
        await page.PressAsync("#close-more");
    }

    private static IRenderedComponent<ReadPage> Reading(ClubOfTwo club) =>
        club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "r").Add(r => r.Boat, "teal"));

    private static async Task<ClubOfTwo> WithTealAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("r"));
        return club;
    }
}
