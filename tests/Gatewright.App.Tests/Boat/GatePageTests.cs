using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Boat;

public sealed class GatePageTests
{
    /// <summary>What is looked for is said in English, whatever is spoken where the tests run.</summary>
    public GatePageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    [Fact]
    public async Task A_reading_taken_back_no_longer_counts_and_is_still_told()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 4);
        IRenderedComponent<GatePage> page = boat.Gate();
        Assert.Empty(page.FindAll("del"));

        await page.PressAsync("section[aria-labelledby=gate-taken] li button");
        await page.SendAsync("section[aria-labelledby=gate-taken] form");

        page.WaitForElement("del");
        Assert.Equal("4.0°", page.Find("del").TextContent);
        Assert.Contains("taken back", page.Find("li.old").TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing was read", page.Find("section[aria-labelledby=gate-as-read]").TextContent, StringComparison.Ordinal);
        Assert.Single(boat.InHand.Club.All(), r => r.Fact is Retracted);
    }

    [Fact]
    public async Task A_reading_says_what_comes_of_it_where_the_level_is_taken_out()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 4);
        await boat.RecordAsync(
            new BoatLaid("low", BoatInHand.Key, Lie.Upright, LevelBasis.Read, -0.5m, 0),
            new ReadingTaken("low", BoatInHand.Key, ReadItem.Gate, 1, Side.Starboard, 3.5m, Station.Abeam));

        IRenderedComponent<GatePage> page = boat.Gate();

        Assert.Equal(["3.5° entered; 4.0° with the boat's level taken out"], page.FindAll("section[aria-labelledby=gate-taken] .entered").Select(e => e.TextContent));
    }

    [Fact]
    public async Task The_two_questions_stand_apart_each_with_its_own_figures()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 1);

        IRenderedComponent<GatePage> page = boat.Gate();

        page.WaitForElement("section[aria-labelledby=gate-probably] .causes");
        IElement asRead = page.Find("section[aria-labelledby=gate-as-read]");
        Assert.Contains("1.0°", asRead.QuerySelector("svg[role=img].gw-drawing")!.GetAttribute("aria-label")!, StringComparison.Ordinal);

        // Read abeam alone: catch and finish are expected, and told under the other question.
        Assert.Single(asRead.QuerySelectorAll(".chip"));
        Assert.Equal(2, page.FindAll("section[aria-labelledby=gate-probably] > ul:not(.causes) > li").Count);
    }

    [Fact]
    public async Task In_the_past_nothing_is_taken_back()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today.AddDays(-9), 4);

        IRenderedComponent<GatePage> page = boat.Gate(Today.AddDays(-3));

        page.WaitForElement(".past-note");
        Assert.Empty(page.FindAll("section[aria-labelledby=gate-taken] button, .thumb"));
    }
}
