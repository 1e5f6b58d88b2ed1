using System.Globalization;
using Bunit;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Tests.Round;

/// <summary>How a boat lies can be put right for what was read, or said to be otherwise since.</summary>
public sealed class LayingPanelTests
{
    public LayingPanelTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Moved_and_lying_alike_it_is_a_new_lying_from_the_next_reading_on_even_loaded_anew()
    {
        await using ClubOfTwo club = await WithTealAsync(4.0m);
        IRenderedComponent<ReadPage> page = await OpenAsync(club);

        await page.ChooseAsync("#moved", "on");
        Assert.Contains("stays as it is", page.Find("#lay-changes").TextContent, StringComparison.Ordinal);
        await page.PressAsync("#lay");
        var again = new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null);
        await again.RecordAsync(4.5m);

        Assert.Equal(2, Recorded<ReadingTaken>(club).Select(r => r.Lying).Distinct().Count());
        Assert.Equal([null, true], Recorded<BoatLaid>(club).Select(l => l.Moved));
    }

    [Fact]
    public async Task Entered_wrongly_upright_it_is_put_right_for_all_that_was_read()
    {
        await using ClubOfTwo club = await WithTealAsync(4.0m);
        IRenderedComponent<ReadPage> page = await OpenAsync(club);
        await page.ChooseAsync("input[name=lie]", "on", (int)Lie.Inverted);
        Assert.True(page.Find("#moved").HasAttribute("checked"));

        await page.ChooseAsync("#so-before", "on");
        Assert.Contains("judged anew by it: 1", page.Find("#lay-changes").TextContent, StringComparison.Ordinal);
        Assert.Contains("port on the other hand", page.Find("#lay-changes").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".caution"));
        await page.PressAsync("#lay");
        await page.PressAsync("#pad [data-value='4.5']");

        BoatLaid[] laid = Recorded<BoatLaid>(club);
        Assert.Equal([Lie.Upright, Lie.Inverted], laid.Select(l => l.Lie));
        Assert.Single(laid.Select(l => l.Lying).Concat(Recorded<ReadingTaken>(club).Select(r => r.Lying)).Distinct());
    }

    [Fact]
    public async Task Turned_over_since_the_reading_before_stays_as_it_was()
    {
        await using ClubOfTwo club = await WithTealAsync(4.0m);
        IRenderedComponent<ReadPage> page = await OpenAsync(club);
        await page.ChooseAsync("input[name=lie]", "on", (int)Lie.Inverted);
        Assert.NotEmpty(page.FindAll(".caution"));
        await page.PressAsync("#lay");
        await page.PressAsync("#pad [data-value='4.5']");

        Assert.Equal(2, Recorded<ReadingTaken>(club).Select(r => r.Lying).Distinct().Count());
        Assert.Equal([Lie.Upright, Lie.Inverted], Recorded<BoatLaid>(club).Select(l => l.Lie));
    }

    [Fact]
    public async Task What_is_said_before_the_first_reading_outlasts_a_reload()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<ReadPage> page = await OpenAsync(club);
        Assert.Empty(page.FindAll("#moved"));
        await page.ChooseAsync("input[name=lie]", "on", (int)Lie.Inverted);
        await page.PressAsync("#lay");

        Assert.Equal(Lie.Inverted, new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null).Laying.Lie);
    }

    [Fact]
    public async Task Closed_as_it_was_nothing_is_recorded()
    {
        await using ClubOfTwo club = await WithTealAsync(4.0m);
        IRenderedComponent<ReadPage> page = await OpenAsync(club);
        Assert.Empty(page.Find("#lay-changes").TextContent.Trim());
        await page.PressAsync("#lay");

        Assert.Single(Recorded<BoatLaid>(club));
    }

    [Fact]
    public async Task What_this_device_cannot_keep_is_told_and_stays_as_it_was_entered()
    {
        await using ClubOfTwo club = await WithTealAsync(4.0m);
        IRenderedComponent<ReadPage> page = await OpenAsync(club);
        await page.ChooseAsync("#moved", "on");
        club.Shelf.IsFull = true;
        await page.PressAsync("#lay");

        Assert.NotEmpty(page.FindAll(".wrong[role=alert]"));
        Assert.True(page.Find("#moved").HasAttribute("checked"));
    }

    private static async Task<IRenderedComponent<ReadPage>> OpenAsync(ClubOfTwo club)
    {
        IRenderedComponent<ReadPage> page = club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "round").Add(r => r.Boat, "teal"));
        await page.PressAsync("#lies");
        return page;
    }

    private static T[] Recorded<T>(ClubOfTwo club) => [.. club.InHand.Club.All().Select(r => r.Fact).OfType<T>()];

    private static async Task<ClubOfTwo> WithTealAsync(params decimal[] values)
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("round"));
        var desk = new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null);
        foreach (decimal value in values)
        {
            await desk.RecordAsync(value);
        }

        return club;
    }
}
