using System.Globalization;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Reporting;
using Gatewright.App.Rig;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace Gatewright.App.Tests.Frame;

/// <summary>Where a touch takes away what had the focus, the focus goes to what came of it; and what comes of it is heard.</summary>
public class FocusTests
{
    public FocusTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    private static readonly ThingSet Teal =
        new(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" });

    [Fact]
    public async Task Each_step_of_a_report_leads_to_the_next_question()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Teal);
        IRenderedComponent<ReportPage> page = club.Page.Render<ReportPage>();

        await page.PressAsync(".boat");
        Assert.Equal("what", Focused(club, page));
        await page.PressAsync("#what-Knock");
        Assert.Equal("where", Focused(club, page));
        await page.PressAsync(".gw-place");
        Assert.Equal("chosen-where", Focused(club, page));
        await page.PressAsync("#send");
        page.WaitForElement("#take-back");
        Assert.Equal("sent", Focused(club, page));
        AssertHeard(page);
        await page.PressAsync("#take-back");
        page.WaitForElement("#what");
        Assert.Equal("what", Focused(club, page));
    }

    [Fact]
    public async Task A_job_that_is_closed_says_so_at_its_heading()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Teal,
            new Held("teal", "knock"),
            new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert"], [], [], 1, Side.Starboard));
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#drop");

        await page.PressAsync("#drop");
        page.WaitForElement("#closed");
        Assert.Equal("closed", Focused(club, page));
        AssertHeard(page);
        await page.PressAsync("#reopen");
        page.WaitForElement("#drop");
        Assert.Equal("proof", Focused(club, page));
    }

    /// <summary>While a tick is being kept its box cannot be touched, and a browser takes the focus off what cannot.</summary>
    [Fact]
    public async Task Whoever_ticks_a_step_or_takes_a_part_stays_there()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Teal,
            new StockCounted("insert", 4, 3),
            new StockCounted("washer", 2, 3),
            new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert", "Look at it"], [new("insert", 4, 1), new("washer", 2, 1)], [], 1, Side.Starboard));
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#step-1");

        await page.ChooseAsync("#step-1", true);
        Assert.Equal("step-1", Focused(club, page));
        await page.PressAsync("#part-1");
        Assert.Equal("part-1", Focused(club, page));
        Assert.Contains("Put back", page.Find("#part-1").TextContent, StringComparison.Ordinal);
        await page.PressAsync("#part-0");
        Assert.Equal("part-0", Focused(club, page));
        club.Shelf.IsFull = true;
        await page.ChooseAsync("#step-0", true);
        page.WaitForElement(".wrong[role=alert]");
        Assert.Equal("step-0", Focused(club, page));
    }

    [Fact]
    public async Task Whoever_comes_from_reading_a_gate_again_stands_at_the_proof()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Teal,
            new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert"], [], [], 1, Side.Starboard));

        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("job/j#proof");
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#proof");

        Assert.Equal("proof", Focused(club, page));
    }

    [Fact]
    public async Task A_panel_that_closes_gives_the_focus_back_to_what_opened_it()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Teal, new RoundStarted("r"));
        IRenderedComponent<ReadPage> page = club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "r").Add(r => r.Boat, "teal"));

        await page.PressAsync("#more");
        await page.PressAsync("#close-more");
        Assert.Equal("more", Focused(club, page));
        await page.PressAsync("#lies");
        await page.PressAsync("#lay");
        page.WaitForElement("#lies");
        Assert.Equal("lies", Focused(club, page));
    }

    [Fact]
    public async Task Whoever_repeats_a_slip_or_reads_on_from_the_story_stands_at_the_pad()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Teal, new RoundStarted("r"));
        IRenderedComponent<ReadPage> page = club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "r").Add(r => r.Boat, "teal"));

        await page.TypeAsync("#typed", "17");
        await page.SendAsync(".pad form");
        await page.PressAsync("#repeat");
        AssertAtPad(club, page, 1);

        await page.PressAsync("#pad [data-value='4.0']");
        await page.PressAsync("#pad [data-value='4.0']");
        page.WaitForElement("#undo", TimeSpan.FromSeconds(30));
        await page.PressAsync("#undo");
        AssertAtPad(club, page, 2);

        await page.PressAsync("#more");
        await page.PressAsync("#to-story");
        page.WaitForElement("#read-left", TimeSpan.FromSeconds(30));
        await page.PressAsync("#read-left");
        AssertAtPad(club, page, 4);
    }

    [Fact]
    public async Task A_reading_that_is_taken_back_or_is_not_gives_the_focus_on()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Teal,
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.ByEye),
            new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4, Station.Abeam));
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("boat/teal/gate/1/starboard");
        IRenderedComponent<GatePage> page = club.Page.Render<GatePage>(p => p.Add(b => b.Key, "teal").Add(b => b.Seat, 1).Add(b => b.SideWord, "starboard"));
        const string taken = "section[aria-labelledby=gate-taken] ";
        page.WaitForElement(taken + "li button");
        string asks = page.Find(taken + "li button").Id!;

        await page.PressAsync(taken + "li button");
        Assert.Equal(page.Find(taken + "input").Id, Focused(club, page));
        await page.PressAsync(taken + "form .quiet");
        Assert.Equal(asks, Focused(club, page));

        await page.PressAsync(taken + "li button");
        await page.SendAsync(taken + "form");
        page.WaitForState(() => club.Page.JSInterop.Invocations["focus"].Count == 4);
        Assert.Equal("no-longer", Focused(club, page));
    }

    [Fact]
    public async Task What_is_asked_before_a_club_is_handed_over_or_let_go_of_gives_the_focus_back()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        ThisDevice device = club.Page.Services.GetRequiredService<ThisDevice>();
        await device.StartClubAsync("Weir Side");
        IRenderedComponent<ClubsHere> page = club.Page.Render<ClubsHere>();

        await page.PressAsync("#hand-over-do");
        Assert.Equal("hand-over-no", Focused(club, page));
        await page.PressAsync("#hand-over-no");
        Assert.Equal("hand-over-do", Focused(club, page));

        await page.PressAsync("#let-go-c");
        page.WaitForElement("#let-go-no");
        await page.PressAsync("#let-go-no");
        Assert.Equal("let-go-c", Focused(club, page));
    }

    [Fact]
    public async Task What_else_can_be_done_while_a_rig_is_measured_gives_the_focus_back_when_it_closes()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Teal);
        IRenderedComponent<MeasurePage> page = club.Page.Render<MeasurePage>(p => p.Add(r => r.Boat, "teal"));
        await page.SendAsync();
        page.WaitForElement("#more");

        await page.PressAsync("#more");
        await page.PressAsync("#close-more");

        Assert.Equal("more", Focused(club, page));
    }

    [Fact]
    public async Task A_script_that_does_not_come_stops_nobody_and_is_asked_for_again()
    {
        var script = new ScriptOnceGone();
        var focus = new FocusNext(script);

        await focus.GoAsync(["#first"]);
        Assert.Empty(script.Focused);

        await focus.GoAsync(["#second"]);
        Assert.Equal(["#second"], script.Focused);
    }

    /// <summary>A browser that cannot fetch a script the first time it is asked to, and can from then on.</summary>
    private sealed class ScriptOnceGone : IJSRuntime, IJSObjectReference
    {
        private bool _isThere;

        public List<string> Focused { get; } = [];

        public ValueTask<T> InvokeAsync<T>(string identifier, object?[]? args) => InvokeAsync<T>(identifier, CancellationToken.None, args);

        public ValueTask<T> InvokeAsync<T>(string identifier, CancellationToken cancellationToken, object?[]? args)
        {
            if (identifier == "focus")
            {
                Focused.AddRange((string[])args![0]!);
            }
            else if (!_isThere)
            {
                _isThere = true;
                return ValueTask.FromException<T>(new JSException("Failed to fetch dynamically imported module"));
            }

            return ValueTask.FromResult(this is T module ? module : default!);
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }

    private static void AssertAtPad(ClubOfTwo club, IRenderedComponent<ReadPage> page, int times)
    {
        page.WaitForState(() => club.Page.JSInterop.Invocations["focus"].Count >= times);
        Assert.NotNull(page.Find(((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!)[0]).GetAttribute("data-value"));
    }

    /// <summary>The id of what took the focus last.</summary>
    private static string? Focused<T>(ClubOfTwo club, IRenderedComponent<T> page)
        where T : IComponent
    {
        page.WaitForState(() => club.Page.JSInterop.Invocations["focus"].Count > 0);
        var places = (string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!;
        AngleSharp.Dom.IElement? found = places.Select(p => page.FindAll(p)).FirstOrDefault(f => f.Count > 0)?[0];
        Assert.True(found is null || found.LocalName is not ("h2" or "div" or "p") || found.HasAttribute("tabindex"), "What cannot have the focus is given it.");
        return found?.Id;
    }

    /// <summary>A live region holds words alone: what is entered there would be read out anew at each key.</summary>
    private static void AssertHeard<T>(IRenderedComponent<T> page)
        where T : IComponent => Assert.Empty(page.FindAll("[role=status] input, [role=status] button, [role=status] select"));
}
