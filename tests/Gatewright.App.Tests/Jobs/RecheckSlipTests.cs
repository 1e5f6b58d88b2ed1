using System.Globalization;
using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Views;

namespace Gatewright.App.Tests.Jobs;

/// <summary>Where a job is proven a slip is asked about as on a round, and what was said of how the boat lies can be put right.</summary>
public sealed class RecheckSlipTests
{
    private static readonly Fact[] Planned =
    [
        new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new BoatLaid("l", "teal", Lie.Upright, LevelBasis.ByEye),
        new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 9, Station.Abeam),
        new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert"], [], [new(Station.Abeam, 4, 3, 5)], 1, Side.Starboard),
    ];

    public RecheckSlipTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData("4", null)]
    [InlineData("9", null)] // as before the work: it did not take
    [InlineData("14", "14.0, and 4.0 was expected: a slip?")]
    [InlineData("16", "16.0, and 4.0 was expected: a slip?")]
    public async Task The_first_value_is_held_against_what_was_expected_and_what_was_there_before(string typed, string? asked)
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await TypeAsync(page, typed);

        Assert.Equal(asked, page.FindAll(".asked .why").Select(w => w.TextContent).SingleOrDefault());
    }

    [Fact]
    public async Task A_value_far_from_the_last_is_asked_about_and_taken_back_with_the_one_that_puts_it_right()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await TypeAsync(page, "4");
        await TypeAsync(page, "14");
        Assert.Equal("14.0, and 4.0 last time: a slip?", page.Find(".asked .why").TextContent);

        await page.PressAsync("#repeat");
        await TypeAsync(page, "4.5");

        Assert.Equal([4m, 4.5m], Values(club));
        Assert.Empty(page.FindAll(".asked"));

        await page.PressAsync("#undo");
        Assert.Equal([4m, 14m], Values(club));
        page.WaitForElement(".asked");
    }

    [Fact]
    public async Task Kept_it_stands_beside_the_next_and_no_page_asks_again()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await TypeAsync(page, "14");
        await page.PressAsync("#keep");
        Assert.Empty(page.FindAll(".asked"));
        Assert.Empty(Page(club).FindAll(".asked"));

        await TypeAsync(page, "4");
        Assert.Equal([14m, 4m], Values(club));
    }

    [Fact]
    public async Task Loaded_anew_it_is_still_asked_about_and_put_right()
    {
        await using ClubOfTwo club = await StartAsync();
        await TypeAsync(Page(club), "14");

        IRenderedComponent<RecheckPage> again = Page(club);
        Assert.NotEmpty(again.FindAll(".asked"));
        await TypeAsync(again, "4");

        Assert.Equal([4m], Values(club));
    }

    [Fact]
    public async Task What_was_typed_stays_where_it_cannot_be_kept()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        club.Shelf.IsFull = true;
        await TypeAsync(page, "4.2");

        Assert.Equal("4.2", page.Find("#typed").GetAttribute("value"));
        Assert.NotEmpty(page.FindAll(".wrong[role=alert]"));
    }

    /// <summary>Of a station of which nothing was foretold nothing would be told: a tap there would look as if it did nothing.</summary>
    [Fact]
    public async Task Passed_over_it_comes_to_no_station_of_which_nothing_was_foretold()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await page.PressAsync("#skip");
        await page.PressAsync("#pad [data-value='4.0']");

        Assert.Equal(Station.Abeam, Assert.Single(Read(club)).Station);
        Assert.Contains("4.0", page.Find(".now .big").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_it_lies_is_put_right_for_what_was_read()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await TypeAsync(page, "4");
        await page.PressAsync("#lies");
        await page.ChooseAsync("input[name=lie]", "on", (int)Lie.Inverted);
        await page.ChooseAsync("#so-before", "on");
        await page.PressAsync("#lay");
        await TypeAsync(page, "4.5");

        Assert.Equal(Lie.Inverted, Laid(club)[^1].Lie);
        Assert.Single(Laid(club).Select(l => l.Lying).Concat(Read(club).Select(r => r.Lying)).Distinct());
    }

    [Fact]
    public async Task Moved_since_it_has_another_level_even_loaded_anew()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await TypeAsync(page, "4");
        await page.PressAsync("#lies");
        await page.ChooseAsync("#moved", "on");
        await page.PressAsync("#lay");
        await TypeAsync(Page(club), "4.5");

        Assert.Equal(2, Read(club).Select(r => r.Lying).Distinct().Count());
        Assert.Equal([null, true], Laid(club).Select(l => l.Moved));
    }

    [Fact]
    public async Task Closed_as_it_was_it_is_the_same_lying()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await TypeAsync(page, "4");
        await page.PressAsync("#lies");
        await page.PressAsync("#lay");
        await TypeAsync(page, "4.5");

        Assert.Single(Read(club).Select(r => r.Lying).Distinct());
    }

    [Fact]
    public async Task What_is_said_of_how_it_lies_before_the_first_reading_outlasts_a_reload()
    {
        await using ClubOfTwo club = await StartAsync();
        IRenderedComponent<RecheckPage> page = Page(club);
        await page.PressAsync("#lies");
        await page.ChooseAsync("input[name=lie]", "on", (int)Lie.Inverted);
        await page.PressAsync("#lay");
        await TypeAsync(Page(club), "4");

        Assert.Equal(Assert.Single(Laid(club)).Lying, Assert.Single(Read(club)).Lying);
        Assert.Equal(Lie.Inverted, Laid(club)[0].Lie);
    }

    private static async Task TypeAsync(IRenderedComponent<RecheckPage> page, string value)
    {
        await page.TypeAsync("#typed", value);
        await page.SendAsync(".pad form");
    }

    private static ReadingTaken[] Read(ClubOfTwo club)
    {
        JobView job = ClubJobs.Of(club.InHand.Club).Find("j")!;
        return [.. new RecheckTaken(club.InHand.Club, job).Readings.Select(r => (ReadingTaken)r.Fact)];
    }

    private static decimal[] Values(ClubOfTwo club) => [.. Read(club).Select(r => r.Value)];

    private static BoatLaid[] Laid(ClubOfTwo club) => [.. club.InHand.Club.All().Select(r => r.Fact).OfType<BoatLaid>().Where(l => l.Lying != "l")];

    private static async Task<ClubOfTwo> StartAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        return club;
    }

    private static IRenderedComponent<RecheckPage> Page(ClubOfTwo club)
    {
        IRenderedComponent<RecheckPage> page = club.Page.Render<RecheckPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement(".pad-here");
        return page;
    }
}
