using System.Globalization;
using Bunit;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Round;

public sealed class ReadPageTests
{
    public ReadPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task The_story_of_a_boat_read_at_one_station_of_two_shows_what_was_read()
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright);
        IRenderedComponent<ReadPage> page = Page(club);
        Assert.Equal(0, Shown(page));

        await page.PressAsync("#more");
        await page.PressAsync("#to-story");

        await page.WaitForStateAsync(() => Shown(page) == 2, Patience);
    }

    /// <summary>The verdict is told first; the plan is drawn with the reading when nobody waits for it any more.</summary>
    [Fact]
    public async Task What_was_tapped_is_told_at_once_and_stands_on_the_plan_soon_after()
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright);
        IRenderedComponent<ReadPage> page = Page(club);
        string before = Lit();

        await page.PressAsync("#pad [data-value='3.5']");

        Assert.Contains("3.5°", page.Find(".figure").TextContent, StringComparison.Ordinal);
        await page.WaitForStateAsync(() => Lit() != before, Patience);

        string Lit() => page.Find("[aria-current='step']").GetAttribute("aria-label")!;
    }

    /// <summary>A boat's first tap is waited for as any other: what stood there before it is not drawn once more.</summary>
    [Fact]
    public async Task A_boats_first_tap_leaves_the_pads_rows_as_they_stand()
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright);
        IRenderedComponent<ReadPage> page = Page(club);
        int[] drawn() => [.. page.FindComponents<PadRow>().Select(row => row.RenderCount)];
        Assert.Equal([1, 1, 1, 1], drawn());

        await page.PressAsync("#pad [data-value='3.5']");

        Assert.Contains("3.5°", page.Find(".figure").TextContent, StringComparison.Ordinal);
        Assert.Equal([1, 1, 1, 1], drawn());
    }

    [Theory]
    [InlineData(Lie.Inverted, 1)]
    [InlineData(Lie.Upright, 0)]
    public async Task Beside_the_plan_of_a_boat_that_lies_inverted_it_is_said_where_port_is(Lie lie, int times)
    {
        await using ClubOfTwo club = await WithTealAsync(lie);
        IRenderedComponent<ReadPage> page = Page(club);
        Assert.Equal(times, page.FindAll(".inverted").Count);

        await page.PressAsync("#lies");
        Assert.Equal(times, page.FindAll("#inverted").Count);
    }

    [Fact]
    public async Task A_slip_that_is_put_right_is_said_to_be_taken_back_and_undone_to_count_again()
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright);
        var desk = new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", ReadingStep.Face(new(1, Side.Starboard), Station.Catch));
        await desk.RecordAsync(-1.5m);
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("round/round/teal?item=gate&seat=1&side=starboard&at=catch");
        IRenderedComponent<ReadPage> page = Page(club);

        await page.PressAsync("#pad [data-value='4.0']");
        Assert.Contains("−1.5° taken back.", page.Find(".back").TextContent, StringComparison.Ordinal);
        await page.PressAsync("#undo");
        Assert.Contains("−1.5° counts again.", page.Find(".lies").TextContent, StringComparison.Ordinal);
    }

    /// <summary>The sentence under a tap names the figure that was judged: where that is not the one that was tapped, it says so.</summary>
    [Theory]
    [InlineData(0.5, 1)]
    [InlineData(0, 0)]
    public async Task Under_a_tap_it_is_said_where_the_level_was_taken_out(double bowHigh, int times)
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright, new(Lie.Upright, LevelBasis.Read, (decimal)bowHigh, 0));
        IRenderedComponent<ReadPage> page = Page(club);
        await page.PressAsync("#pad [data-value='4.0']");

        Assert.Equal(times, page.FindAll(".entered").Count(e => e.TextContent.StartsWith("4.0° entered; ", StringComparison.Ordinal)));
    }

    /// <summary>Nothing is worked out where nothing that was read counts any more, and nobody waits for it.</summary>
    [Fact]
    public async Task Of_a_boat_that_was_changed_since_it_was_read_it_is_said_that_it_is_to_be_read_again()
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright);
        await club.InHand.RecordAsync(new GateMended("teal", 1, Side.Starboard), new GateMended("teal", 2, Side.Port));
        IRenderedComponent<ReadPage> page = Page(club);
        await page.PressAsync("#more");
        await page.PressAsync("#to-story");

        await page.WaitForStateAsync(() => page.FindAll("#story").Count == 1, Patience);
        Assert.Contains("read it again", page.Find("#story").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".story [role=status]"));
    }

    [Fact]
    public async Task Whoever_leaves_the_club_meanwhile_has_no_pad_any_more()
    {
        await using ClubOfTwo club = await WithTealAsync(Lie.Upright);
        IRenderedComponent<ReadPage> page = Page(club);
        page.WaitForElement("#pad");

        await page.InvokeAsync(club.LeaveAsync);

        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#pad")));
    }

    [Theory]
    [InlineData(false, 1)]
    [InlineData(true, 0)]
    public async Task A_browser_that_cannot_scan_says_so(bool canScan, int times)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Page.JSInterop.SetupModule("./scan.js").Setup<bool>("canScan").SetResult(canScan);
        IRenderedComponent<ScanCode> scan = club.Page.Render<ScanCode>();

        Assert.Equal((times, 1 - times), (scan.FindAll(".cannot").Count, scan.FindAll("#scan").Count));
    }

    private static TimeSpan Patience => TimeSpan.FromSeconds(20);

    private static int Shown(IRenderedComponent<ReadPage> page) =>
        page.FindAll(".boat text").Count(t => t.TextContent.Contains("4.0°", StringComparison.Ordinal));

    private static IRenderedComponent<ReadPage> Page(ClubOfTwo club) =>
        club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "round").Add(r => r.Boat, "teal"));

    /// <summary>A pair read with 4° at the catch, in a round that reads the catch and the finish.</summary>
    private static async Task<ClubOfTwo> WithTealAsync(Lie lie, Laying? laying = null)
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        RoundPlan plan = RoundPlan.None.Begun("round", DateOnly.FromDateTime(DateTime.Today), ["teal"]) with { Stations = [Station.Catch, Station.Finish] };
        await club.Device.SetAsync($"round/{club.InHand.Held.Club}", plan.Write());
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-", ["lie"] = lie == Lie.Inverted ? "inverted" : "upright" }),
            new RoundStarted("round"));
        var desk = new ReadingDesk(club.InHand, plan, "round", "teal", null);
        if (laying is not null)
        {
            await desk.LayAsync(laying, isMoved: false);
        }

        await desk.RecordAsync(4.0m);
        await desk.RecordAsync(4.0m);
        return club;
    }
}
