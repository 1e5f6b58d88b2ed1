using System.Globalization;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Frame;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;
using Gatewright.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Shed;

/// <summary>What brings a boat off the shore again is said as it is: reading where one does not know, mending where one does.</summary>
public class ShedBoatTests
{
    public ShedBoatTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData(Verdict.Unsure, "AshoredUnsure")]
    [InlineData(Verdict.Stop, "Ashored")]
    public async Task A_boat_of_which_one_cannot_tell_is_to_be_read_and_not_mended(Verdict verdict, string text)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }));
        BoatStanding standing = await ReadUntilAsync(club, verdict);

        IRenderedComponent<ShedBoat> boat = club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, new ShedRow(standing.View, null, standing)));

        Assert.Equal(club.Page.Services.GetRequiredService<Texts<ShedTexts>>()[text], boat.Find(".held-word").TextContent);
    }

    [Fact]
    public async Task Of_a_boat_that_is_still_being_judged_nothing_is_said_of_when_it_was_read()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }));
        BoatStanding standing = await ReadUntilAsync(club, Verdict.Stop);
        string about(BoatStanding? known) => club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, new ShedRow(standing.View, null, known))).Find(".about").TextContent;

        Assert.Equal("judging…", about(null));
        Assert.StartsWith("stop · read ", about(standing), StringComparison.Ordinal);
    }

    /// <summary>What is good is what was read; a gate that was changed since was not.</summary>
    [Fact]
    public async Task A_boat_of_which_a_gate_was_changed_since_it_was_read_is_called_good_nowhere_in_the_shed()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }));
        await ReadAsync(club, 4);
        await club.RecordElsewhereAsync(new Reported("teal", ReportKind.Knock, 1, Side.Starboard));

        IRenderedComponent<ShedView> shed = club.Page.Render<ShedView>();

        shed.WaitForAssertion(() => Assert.Equal("to be read again", shed.Find(".about b").TextContent), TimeSpan.FromSeconds(30));
        Assert.Equal("1 to be read again", Assert.Single(shed.FindAll(".counts li")).TextContent.Trim());
    }

    [Fact]
    public async Task What_was_told_of_a_boat_is_shown_and_to_be_seen_to_until_its_gate_is_read()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }));
        await ReadAsync(club, 4);
        await club.RecordElsewhereAsync(new Reported("teal", ReportKind.CrabEarly, 1, Side.Starboard));
        ShedRow told = new(new(club.InHand.Club, "teal"), null, null);

        Assert.True(told.IsIn(ShedChoice.ToSeeTo));
        string day = Wording.English.Language.Day(told.Told!.Day);
        Assert.Equal(
            $"told: {RecordWords.Briefly(told.Told.Record)}, {day}",
            club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, told)).Find(".told").TextContent);

        await ReadAsync(club, 4);
        ShedRow read = new(new(club.InHand.Club, "teal"), null, null);

        Assert.False(read.IsIn(ShedChoice.ToSeeTo));
        Assert.Empty(club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, read)).FindAll(".told"));
    }

    [Fact]
    public async Task Damage_is_shown_and_to_be_seen_to_until_somebody_says_what_was_done()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }),
            new Noted(Things.Gate, "teal/1/port", "Schaden, Platz 1 Backbord: Riss"));
        await ReadAsync(club, 4);
        ShedRow told = new(new(club.InHand.Club, "teal"), null, null);

        Assert.True(told.IsIn(ShedChoice.ToSeeTo));
        Assert.StartsWith("told: damage, seat 1 port, ", club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, told)).Find(".told").TextContent, StringComparison.Ordinal);

        await club.RecordElsewhereAsync(new Released("teal", "splinted"));
        Assert.Null(new ShedRow(new(club.InHand.Club, "teal"), null, null).Told);
    }

    [Theory]
    [InlineData("coach", 0)]
    [InlineData("keeper", 1)]
    public async Task A_round_is_offered_to_whoever_may_read(string role, int offers)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(role);
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }));

        IRenderedComponent<ShedView> shed = club.Page.Render<ShedView>();

        Assert.Equal(offers, shed.FindAll("p.thumb a[href=round]").Count);
    }

    [Fact]
    public async Task A_boat_that_stands_as_it_did_is_not_drawn_again_unless_the_member_may_do_something_else()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }));
        ShedRow row = new(new(club.InHand.Club, "teal"), null, null);
        IRenderedComponent<ShedBoat> boat = club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, row));
        int once = boat.RenderCount;

        boat.Render(p => p.Add(b => b.Row, row));
        Assert.Equal(once, boat.RenderCount);

        boat.Render(p => p.Add(b => b.MayRead, true));
        Assert.Single(boat.FindAll(".read"));
    }

    private static async Task ReadAsync(ClubOfTwo club, decimal degrees)
    {
        string lying = Guid.CreateVersion7().ToString("N");
        await club.RecordElsewhereAsync(
            new BoatLaid(lying, "teal", Lie.Upright, LevelBasis.ByEye),
            new ReadingTaken(lying, "teal", ReadItem.Gate, 1, Side.Port, degrees, Station.Abeam),
            new ReadingTaken(lying, "teal", ReadItem.Gate, 1, Side.Starboard, degrees, Station.Abeam));
    }

    /// <summary>Reads every gate half a degree lower each time, the level by eye, until the verdict is as wanted and keeps the boat ashore.</summary>
    private static async Task<BoatStanding> ReadUntilAsync(ClubOfTwo club, Verdict verdict)
    {
        for (decimal degrees = 5; degrees > -6; degrees -= 0.5m)
        {
            await ReadAsync(club, degrees);
            if (await club.InHand.BoatAsync("teal") is { StaysAshore: true } standing && standing.Check!.Verdict.Verdict == verdict)
            {
                return standing;
            }
        }

        throw new InvalidOperationException($"No reading makes the boat {verdict}.");
    }
}
