using System.Globalization;
using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;
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

    /// <summary>Reads every gate half a degree lower each time, the level by eye, until the verdict is as wanted and keeps the boat ashore.</summary>
    private static async Task<BoatStanding> ReadUntilAsync(ClubOfTwo club, Verdict verdict)
    {
        for (decimal degrees = 5; degrees > -6; degrees -= 0.5m)
        {
            string lying = Guid.CreateVersion7().ToString("N");
            await club.RecordElsewhereAsync(
                new BoatLaid(lying, "teal", Lie.Upright, LevelBasis.ByEye),
                new ReadingTaken(lying, "teal", ReadItem.Gate, 1, Side.Port, degrees, Station.Abeam),
                new ReadingTaken(lying, "teal", ReadItem.Gate, 1, Side.Starboard, degrees, Station.Abeam));
            if (await club.InHand.BoatAsync("teal") is { StaysAshore: true } standing && standing.Check!.Verdict.Verdict == verdict)
            {
                return standing;
            }
        }

        throw new InvalidOperationException($"No reading makes the boat {verdict}.");
    }
}
