using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.OnTheWater;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.OnTheWater;

/// <summary>
/// A boat on the water, against a pair worked out by hand: 4° read everywhere, its target; the oar of seat 2 leans 2° further. With the usual pair's
/// rig the oar rolls by 780.53 N m times the sine of its pitch in the mean over the drive, men pulling, and the handle holds 580.12 N times that sine: 27.1 N m
/// of roll down to starboard, since port is lifted more, and 10.09 N to either side of the mean. Women pull 1020/1350 of it: 20.5 N m and 7.62 N.
/// </summary>
public sealed class WaterPageTests
{
    public WaterPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task The_figures_are_those_worked_out_by_hand_and_go_with_the_pull()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<WaterPage> page = await RenderAsync(club);

        Assert.Matches(@"^Mean over the drive: 27 ± \d+ N m, down to starboard\.$", Mean(page));
        Assert.Collection(
            Cells(page, 0),
            seat1 => Assert.Matches("^\u221210\\.1 ± \\d\\.\\d N$", seat1),
            seat2 => Assert.Matches(@"^10\.1 ± \d\.\d N$", seat2));
        IReadOnlyList<string> chances = [.. Cells(page, 2), .. Cells(page, 3)];
        string[] turns = Degrees(page);

        await page.PressAsync(".pulls button", 1);

        Assert.Matches(@"^Mean over the drive: 21 ± \d+ N m, down to starboard\.$", Mean(page));
        Assert.Collection(
            Cells(page, 0),
            seat1 => Assert.Matches("^\u22127\\.6 ± \\d\\.\\d N$", seat1),
            seat2 => Assert.Matches(@"^7\.6 ± \d\.\d N$", seat2));
        Assert.Equal("true", page.FindAll(".pulls button")[1].GetAttribute("aria-pressed"));

        // What is no force stays: the chances, the turn and its place.
        Assert.Equal(chances, [.. Cells(page, 2), .. Cells(page, 3)]);
        Assert.Equal(turns, Degrees(page));
    }

    [Fact]
    public async Task The_sleeve_that_is_off_is_told_first_with_how_it_is_turned()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<WaterPage> page = await RenderAsync(club);

        IElement first = page.Find("#first-title").ParentElement!;
        Assert.Matches(
            @"^The sleeve of Oar 7 \(seat 2 port\) first, for balance, rather than a gate: .* turned by 2\.0 ± 0\.\d° to the bow the roll moment",
            first.QuerySelector("b")!.TextContent);

        // 2° round 46 mm are π · 46 · 2/360 = 0.80 mm.
        string turn = Assert.Single(first.QuerySelectorAll("p.caution")).TextContent;
        Assert.Matches(@"the top of the blade has to come 2\.0 ± 0\.\d° towards the bow, 0\.8 mm round a shaft of 46 mm\.", turn);
        Assert.Contains("Heat and glue only as the oar maker says", turn, StringComparison.Ordinal);
        Assert.Equal("", Cells(page, 3)[0]);
        Assert.Matches(@"%, by 2\.0 ± 0\.\d° to the bow$", Cells(page, 3)[1]);
    }

    [Fact]
    public async Task Of_a_boat_not_read_whole_nothing_is_told()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync([.. Pair().Take(5)]);
        IRenderedComponent<WaterPage> page = club.Page.Render<WaterPage>(p => p.Add(w => w.Key, "teal"));

        page.WaitForAssertion(() => Assert.Contains("Not every gate of this boat was read.", page.Markup, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("table"));
    }

    private static async Task<IRenderedComponent<WaterPage>> RenderAsync(ClubOfTwo club)
    {
        BunitContext.DefaultWaitTimeout = TimeSpan.FromSeconds(30);
        await club.InHand.RecordAsync([.. Pair()]);
        IRenderedComponent<WaterPage> page = club.Page.Render<WaterPage>(p => p.Add(w => w.Key, "teal"));
        page.WaitForElement("#first-title");
        return page;
    }

    private static string Mean(IRenderedComponent<WaterPage> page) => page.Find("#roll-title").ParentElement!.QuerySelector("p")!.TextContent;

    private static string[] Cells(IRenderedComponent<WaterPage> page, int column) =>
        [.. page.FindAll("table tbody tr").Select(row => row.QuerySelectorAll("td")[column].TextContent.Trim())];

    private static string[] Degrees(IRenderedComponent<WaterPage> page) =>
        [.. page.FindAll("p.caution").Select(p => p.TextContent)];

    private static IEnumerable<Fact> Pair()
    {
        yield return Set(Things.Boat, "teal", ("name", "Teal"), ("class", "2-"));
        yield return new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0);
        foreach (Station station in new[] { Station.Catch, Station.Abeam, Station.Finish })
        {
            yield return new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4, station);
        }

        foreach (Station station in new[] { Station.Catch, Station.Abeam, Station.Finish })
        {
            yield return new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4, station);
        }

        foreach ((string oar, string seat, string side, decimal sleeve) in new[] { ("o6", "1", "starboard", 0m), ("o7", "2", "port", 2m) })
        {
            yield return Set(Things.Oar, oar, ("name", "Oar " + oar[1]), ("boat", "teal"), ("seat", seat), ("side", side));
            yield return new OarRead(oar, OarItem.Sleeve, sleeve, Session: "s", Level: LevelBasis.Read, BowHigh: 0);
        }
    }

    private static ThingSet Set(string thing, string key, params (string Field, string? Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => f.Value));
}
