using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.Replica.Shelves;
using Gatewright.App.Changing;
using Gatewright.App.Device;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Changing;

/// <summary>The pages about a boat's whole rig, over a club with two pairs.</summary>
public sealed class ChangingPagesTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);

    public ChangingPagesTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_change_is_kept_among_the_jobs()
    {
        await using ClubOnDevice club = await StartAsync();
        ChangePlanned kept = await KeepAsync(club);

        Assert.Equal("Seat 2: set the spread from 87.0 cm to 85.0 cm.", Assert.Single(kept.Steps).Text);
        Assert.Empty(club.Recorded<MeasureSet>());
        Assert.EndsWith("change/" + kept.Job, club.Page.Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_step_that_is_ticked_sets_and_what_is_read_ticks_itself_off()
    {
        await using ClubOnDevice club = await StartAsync();
        ChangePlanned kept = await KeepAsync(club);
        IRenderedComponent<KeptChangePage> page = club.Page.Render<KeptChangePage>(p => p.Add(c => c.Id, kept.Job));

        Assert.Contains("waits for its steps", page.Find(".again").TextContent, StringComparison.Ordinal);
        await page.ChooseAsync(".step input", true);
        page.WaitForAssertion(() => Assert.Contains("to be read", Spread(page).TextContent, StringComparison.Ordinal));

        Assert.Equal(85, Assert.Single(club.Recorded<MeasureSet>()).Value);
        Assert.Equal(3, club.Recorded<MeasureTaken>().Count);
        Assert.Contains(club.Recorded<Reported>(), r => r is { Kind: ReportKind.Refitted, Seat: 2, Side: Side.Port });

        await page.InvokeAsync(() => club.InHand.RecordAsync(new MeasureTaken("teal", "spread", 2, 85.1m, "cm")));
        page.WaitForAssertion(() => Assert.Equal("✓", Spread(page).QuerySelector(".tick")!.TextContent));
        Assert.Contains("85.1 ± 0.3 cm, read ", Spread(page).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tick_that_is_taken_back_leaves_the_rig_as_it_was()
    {
        await using ClubOnDevice club = await StartAsync();
        ChangePlanned kept = await KeepAsync(club);
        IRenderedComponent<KeptChangePage> page = club.Page.Render<KeptChangePage>(p => p.Add(c => c.Id, kept.Job));

        await page.ChooseAsync(".step input", true);
        page.WaitForAssertion(() => Assert.Contains("to be read", Spread(page).TextContent, StringComparison.Ordinal));
        await page.ChooseAsync(".step input", false);
        page.WaitForAssertion(() => Assert.Contains("waits for its steps", Spread(page).TextContent, StringComparison.Ordinal));

        Assert.Equal(87, new RigView(club.InHand.Club, new BoatView(club.InHand.Club, "teal")).Readings.Single().Value);
    }

    [Fact]
    public async Task An_open_change_stands_in_the_list_of_jobs_and_goes_when_it_is_closed()
    {
        await using ClubOnDevice club = await StartAsync();
        ChangePlanned kept = await KeepAsync(club);
        club.Page.ComponentFactories.AddStub<ShedPlanView>();
        IRenderedComponent<JobsPage> jobs = club.Page.Render<JobsPage>();
        jobs.WaitForAssertion(() => Assert.Contains("0 of 1 steps done", jobs.Find("#open-list").TextContent, StringComparison.Ordinal));
        Assert.Equal("change/" + kept.Job, jobs.Find("#open-list a").GetAttribute("href"));

        IRenderedComponent<KeptChangePage> page = club.Page.Render<KeptChangePage>(p => p.Add(c => c.Id, kept.Job));
        await page.PressAsync("#close");
        page.WaitForElement("#closed");

        jobs.WaitForAssertion(() => Assert.Empty(jobs.FindAll("#open-list a")));
        Assert.Contains("Left unread, or not as it was to be: 5.", page.Markup, StringComparison.Ordinal);
    }

    /// <summary>A browser takes the focus off what is gone, and off what cannot be touched.</summary>
    [Fact]
    public async Task Whoever_ticks_a_step_stays_there_and_whoever_opens_a_change_again_goes_to_what_is_to_be_read()
    {
        await using ClubOnDevice club = await StartAsync();
        ChangePlanned kept = await KeepAsync(club);
        IRenderedComponent<KeptChangePage> page = club.Page.Render<KeptChangePage>(p => p.Add(c => c.Id, kept.Job));
        var written = new TaskCompletionSource();
        club.Shelf.Writing = () => written.Task;

        Task ticked = page.ChooseAsync(".step input", true);
        page.Render();
        Assert.False(page.Find(".step input").HasAttribute("disabled"));
        Task again = page.ChooseAsync(".step input", true);
        written.SetResult();
        await Task.WhenAll(ticked, again);
        page.WaitForAssertion(() => Assert.Single(club.Recorded<MeasureSet>()));

        await page.PressAsync("#close");
        page.WaitForElement("#closed");
        Assert.Equal("#closed", Focused());
        await page.PressAsync("#reopen");
        page.WaitForState(() => page.FindAll("#closed").Count == 0);
        Assert.Equal("#again", Focused());
        Assert.Equal("-1", page.Find("#again").GetAttribute("tabindex"));

        string Focused() => ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!)[0];
    }

    [Fact]
    public async Task A_rig_is_kept_under_a_name_and_offered()
    {
        await using ClubOnDevice club = await StartAsync();
        IRenderedComponent<ChangePage> page = Render<ChangePage>(club, "boat/teal/change");
        page.WaitForElement("#keep-name").Change("Regatta");
        await page.SendAsync("details form");

        page.WaitForAssertion(() => Assert.Contains(page.FindAll("#to option"), o => o.TextContent == "Regatta"));
        Assert.Contains(club.Recorded<ThingSet>(), s => s.Thing == Things.Rig && s.Fields["spread/2"] == "87");
    }

    [Fact]
    public async Task Two_boats_are_laid_side_by_side()
    {
        await using ClubOnDevice club = await StartAsync();
        IRenderedComponent<ComparePage> page = Render<ComparePage>(club, "boat/teal/compare?with=boat%3Awren");
        page.WaitForElement("#compared-head");

        IElement differs = page.Find("#as-Differs").ParentElement!;
        Assert.Contains("Seat 2 spread", Spaced(differs), StringComparison.Ordinal);
        Assert.Contains("\u22123.0 ± 0.4 cm", Spaced(differs), StringComparison.Ordinal);
        Assert.Contains("less, over 99 % sure", Spaced(differs), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_boat_on_the_road_is_read_once_all_its_riggers_are_on()
    {
        await using ClubOnDevice club = await StartAsync();
        IRenderedComponent<TravelPage> page = Render<TravelPage>(club, "boat/teal/travel");
        page.WaitForElement("#put-on");

        Assert.Contains("Rigger of seat 1 starboard: write that on it", page.Find("#off").ParentElement!.TextContent, StringComparison.Ordinal);
        for (int i = 0; i < 2; i++)
        {
            Assert.True(page.Find("#put-on").HasAttribute("disabled"));
            int rigger = i;
            await page.InvokeAsync(() => page.Find("#on").ParentElement!.QuerySelectorAll("input")[rigger].Change(true));
        }

        await page.PressAsync("#put-on");

        page.WaitForAssertion(() => Assert.EndsWith("round?boat=teal", club.Page.Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        Assert.Equal(2, club.Recorded<Reported>().Count);
    }

    [Fact]
    public async Task A_tick_is_shown_once_it_is_kept_and_what_the_disk_refuses_is_told()
    {
        await using ClubOnDevice club = await StartAsync(new FullShelf());
        var shelf = (FullShelf)club.Page.Services.GetRequiredService<IDeviceShelf>();
        ThisDevice device = club.Page.Services.GetRequiredService<ThisDevice>();
        await device.OpenAsync();
        await device.Device.JoinAsync(new("ada", "Ada", [new(club.InHand.Held.Club, "Heron", "m-ada", "keeper")], "token"));
        IRenderedComponent<TravelPage> page = Render<TravelPage>(club, "boat/teal/travel");
        page.WaitForElement("#put-on");
        shelf.Writing = () => throw new ShelfException(ShelfFault.Full, "No more room.");

        await page.ChooseAsync(".step input", true);

        Assert.NotEmpty(page.Find("[role=alert]").TextContent);
        Assert.Empty(page.FindAll(".step.done"));
        Assert.False(page.Find(".step input").HasAttribute("checked"));

        var slow = new TaskCompletionSource();
        shelf.Writing = () => slow.Task;
        Task[] taps = [page.ChooseAsync(".step input", true), page.ChooseAsync(".step input", true, 1)];
        Assert.Empty(page.FindAll(".step.done"));
        slow.SetResult();
        await Task.WhenAll(taps);

        Assert.Empty(page.FindAll("[role=alert]"));
        Assert.Equal(2, page.FindAll(".step.done").Count);
        Assert.Equal(2, device.Device.Of(club.InHand.Held.Club, "ticks travel teal")?.Split('\n').Length);
    }

    [Fact]
    public async Task A_seat_as_it_was_found_to_be_set_is_planned_and_kept()
    {
        await using ClubOnDevice club = await StartAsync();
        IRenderedComponent<ChangePage> page = Render<ChangePage>(club, "boat/teal/change?to=" + Uri.EscapeDataString("set:2:spread=85.5,inboard=116.5"));
        page.WaitForElement("#plan-head");

        Assert.Equal("From Teal to seat 2 with spread 85.5 cm, inboard 116.5 cm: 1 step.", Spaced(page.Find("#plan-head")));
        Assert.Contains("Seat 2: set the spread from 87.0 cm to 85.5 cm.", page.Find("#phase-width").ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Seat 2 with spread 85.5 cm, inboard 116.5 cm", page.FindAll("#to option").Single(o => o.HasAttribute("selected")).TextContent);

        // Nobody measured the inboard: that comes first.
        Assert.Contains("inboard", page.Find("#measure-first").ParentElement!.TextContent, StringComparison.OrdinalIgnoreCase);
        await page.PressAsync("#keep-change");
        page.WaitForAssertion(() => Assert.Equal("seat 2 with spread 85.5 cm, inboard 116.5 cm", Assert.Single(club.Recorded<ChangePlanned>()).Rig));
    }

    [Theory]
    [InlineData("set:9:spread=85")]
    [InlineData("set:2:spread=850")]
    [InlineData("set:2:span=158")]
    [InlineData("set:2:spread")]
    [InlineData("set:two:spread=85")]
    [InlineData("set:2:gate=4")]
    public async Task What_is_no_seat_to_be_set_is_no_rig(string to)
    {
        await using ClubOnDevice club = await StartAsync();
        IRenderedComponent<ChangePage> page = Render<ChangePage>(club, "boat/teal/change?to=" + Uri.EscapeDataString(to));

        page.WaitForAssertion(() => Assert.Contains("Nothing is known of that rig.", page.Markup, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("boat/grebe/change", "grebe", "There is no such boat.")]
    [InlineData("boat/plain/change", "plain", "Its class is not known yet; set it first.")]
    public async Task A_boat_without_a_rig_says_why(string place, string key, string told)
    {
        await using ClubOnDevice club = await StartAsync();
        IRenderedComponent<ChangePage> page = Render<ChangePage>(club, place, key);

        page.WaitForAssertion(() => Assert.Contains(told, page.Markup, StringComparison.Ordinal));
    }

    private static async Task<ChangePlanned> KeepAsync(ClubOnDevice club)
    {
        IRenderedComponent<ChangePage> page = Render<ChangePage>(club, "boat/teal/change?to=day%3A2026-05-04");
        page.WaitForElement("#plan-head");
        Assert.Contains("Seat 2: set the spread from 87.0 cm to 85.0 cm.", page.Find("#phase-width").ParentElement!.TextContent, StringComparison.Ordinal);
        await page.PressAsync("#keep-change");
        page.WaitForAssertion(() => Assert.Single(club.Recorded<ChangePlanned>()));
        return club.Recorded<ChangePlanned>().Single();
    }

    private static IElement Spread(IRenderedComponent<KeptChangePage> page) =>
        page.FindAll(".again li").Single(li => li.TextContent.Contains("Seat 2: spread", StringComparison.Ordinal));

    private static string Spaced(IElement element) => string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static IRenderedComponent<T> Render<T>(ClubOnDevice club, string place, string key = "teal")
        where T : RigPage
    {
        BunitContext.DefaultWaitTimeout = TimeSpan.FromSeconds(30);
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo(place);
        return club.Page.Render<T>(p => p.Add(b => b.Key, key));
    }

    private static async Task<ClubOnDevice> StartAsync(IDeviceShelf? shelf = null)
    {
        ClubOnDevice club = await ClubOnDevice.StartAsync();
        club.Page.Services.AddSingleton(shelf ?? new MemoryShelf());
        club.Page.Services.AddSingleton<BrowserRoom>();
        club.Page.Services.AddSingleton<ThisDevice>();
        await club.InHand.RecordAsync(
            Boat("teal", ("name", "Teal"), ("class", "2-")),
            Boat("wren", ("name", "Wren"), ("class", "2-")),
            Boat("plain", ("name", "Plain")),
            new MeasureTaken("teal", "spread", 2, 85, "cm", Date: May4),
            new MeasureTaken("teal", "spread", 2, 87, "cm", Date: May4.AddDays(9)),
            new MeasureTaken("wren", "spread", 2, 84, "cm", Date: May4),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: May4),
            new Gatewright.Journal.Facts.ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4, Station.Abeam));
        return club;
    }

    private static ThingSet Boat(string key, params (string Field, string? Value)[] fields) =>
        new(Things.Boat, key, fields.ToDictionary(f => f.Field, f => f.Value));
}
