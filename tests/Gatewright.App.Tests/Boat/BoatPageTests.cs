using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Boat;

public sealed class BoatPageTests
{
    /// <summary>What is looked for is said in English, whatever is spoken where the tests run.</summary>
    public BoatPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    [Fact]
    public async Task A_held_boat_says_so_in_words_before_its_verdict_with_why_and_who()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 4);
        await boat.RecordAsync(new Held(BoatInHand.Key, "Crack at seat 2's shoulder"));

        IRenderedComponent<BoatPage> page = boat.Page();

        IElement held = page.Find("section.held");
        Assert.Equal("Held ashore: not out on the water", page.Find($"#{held.GetAttribute("aria-labelledby")}").TextContent.Trim());
        Assert.Contains("Crack at seat 2's shoulder", held.TextContent, StringComparison.Ordinal);
        Assert.Contains("you", held.TextContent, StringComparison.Ordinal);
        Assert.Equal(["held", "verdict"], page.FindAll(".held, .verdict").Select(e => e.ClassName));
        Assert.Equal("good", page.Find(".verdict .word").TextContent);
    }

    [Fact]
    public async Task A_boat_under_a_floor_says_that_it_stays_ashore_and_names_no_safety()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 0);

        IRenderedComponent<BoatPage> page = boat.Page();

        Assert.Equal("Stays ashore", page.Find("#stays-ashore").TextContent);
        Assert.Equal("stop", page.Find(".verdict .word").TextContent);
        Assert.DoesNotContain("safe ", page.Markup, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_change_of_its_rig_that_is_under_way_stands_among_its_jobs()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 4);
        await boat.RecordAsync(
            new ChangePlanned("c", BoatInHand.Key, "Regatta", [new("Set it.", 1, []), new("Look.", 1, [])], []),
            new ChangePlanned("d", BoatInHand.Key, "Sprint", [new("Set it.", 1, [])], []),
            new StepDone("c", 0),
            new StepDone("d", 0));

        IElement link = Assert.Single(boat.Page().FindAll("a.job"));

        Assert.Equal(("change/c", "Rig to Regatta"), (link.GetAttribute("href"), link.TextContent));
        Assert.Contains("1 of 2", link.ParentElement!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Holding_needs_a_reason_and_is_there_at_once()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 4);
        IRenderedComponent<BoatPage> page = boat.Page();

        await page.ChooseAsync("#hold-reason", " ");
        await page.SendAsync("form:has(#hold-reason)");
        Assert.NotEqual(string.Empty, page.Find("#hold-wrong").TextContent);
        Assert.Empty(page.FindAll("#held-ashore"));

        await page.ChooseAsync("#hold-reason", "Loose stay");
        await page.SendAsync("form:has(#hold-reason)");
        page.WaitForElement("#held-ashore");
        Assert.Contains("Loose stay", page.Find("section.held").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("keeper", true)]
    [InlineData("coach", true)]
    [InlineData("helper", false)]
    public async Task Releasing_is_offered_to_those_alone_who_may(string role, bool isOffered)
    {
        await using BoatInHand boat = await BoatInHand.StartAsync(role);
        await boat.RecordAsync(new Held(BoatInHand.Key, "Crab"));

        IRenderedComponent<BoatPage> page = boat.Page();

        Assert.NotEmpty(page.FindAll("#hold-reason"));
        Assert.Equal(isOffered, page.FindAll("#release-reason").Count == 1);
    }

    /// <summary>Who releases a boat has before them what that lifts, and what it does not.</summary>
    [Fact]
    public async Task A_release_lists_what_it_lifts_and_what_stays()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today.AddDays(-1), 4);
        await boat.RecordAsync(
            new Held(BoatInHand.Key, "Loose stay"),
            new Held(BoatInHand.Key, "Bow ball gone"),
            new Noted(Things.Gate, $"{BoatInHand.Key}/1/port", "Damage, seat 1 port: a crack", new(1, Side.Port, "a crack")),
            new Reported(BoatInHand.Key, ReportKind.CrabEarly, 2, Side.Port));

        IRenderedComponent<BoatPage> page = boat.Page();

        Assert.Equal(
            ["Held ashore: Loose stay", "Held ashore: Bow ball gone", "Damage, seat 1 port: a crack"],
            page.FindAll(".lifts li").Select(li => li.FirstChild!.TextContent.Trim()));
        Assert.All(page.FindAll(".lifts li small"), who => Assert.StartsWith("you, ", who.TextContent, StringComparison.Ordinal));
        Assert.Contains("seat 2 port", page.Find(".stays").TextContent, StringComparison.Ordinal);

        await page.ChooseAsync("#release-reason", "Splinted, Bea looked");
        await page.SendAsync("form:has(#release-reason)");
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#held-ashore, #release-reason")));
        Released released = Assert.Single(boat.InHand.Club.All().Select(r => r.Fact).OfType<Released>());
        Assert.Equal(
            boat.InHand.Club.All().Where(r => r.Fact is Held or Noted).Select(r => r.Entry.Id).Order(), released.Lifts!.Order());
    }

    [Fact]
    public async Task A_gate_that_was_changed_and_not_read_since_leaves_no_good_and_says_what_was_done()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today.AddDays(-1), 0);
        await boat.RecordAsync(
            new ReadingTaken($"l-{Today.AddDays(-1)}", BoatInHand.Key, ReadItem.Gate, 2, Side.Port, 4, Station.Abeam),
            new GateMended(BoatInHand.Key, 1, Side.Starboard));

        IRenderedComponent<BoatPage> page = boat.Page();

        Assert.Equal("to be read again", page.Find(".verdict .word").TextContent);
        Assert.Equal("Stays ashore", page.Find("#changed-unread").TextContent);
        Assert.Contains("Seat 1 starboard was mended on", page.Find("section[aria-labelledby=changed-unread]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_past_reads_as_such_and_offers_no_recording()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today.AddDays(-9), 4);
        await boat.ReadAsync(Today, 0);
        await boat.RecordAsync(new Held(BoatInHand.Key, "Dives"));

        IRenderedComponent<BoatPage> page = boat.Page(Today.AddDays(-5));

        page.WaitForElement(".past-note");
        Assert.Equal("good", page.Find(".verdict .word").TextContent);
        Assert.Empty(page.FindAll("section.held"));
        Assert.Contains("1 reading taken", page.Find("section[aria-labelledby=since-then]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Dives", page.Find("section[aria-labelledby=since-then]").TextContent, StringComparison.Ordinal);

        // The day is all that can be asked for.
        Assert.Equal(["day"], page.FindAll("form input, form select, form textarea").Select(i => i.Id));
        Assert.Empty(page.FindAll("a[href^=round], a[href^=job], a[href^=report], a[href^='boats/']"));
    }

    [Fact]
    public async Task A_boat_without_a_class_says_what_to_do()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.RecordAsync(new ThingSet(Things.Boat, BoatInHand.Key, new Dictionary<string, string?> { ["name"] = "Teal" }));

        IRenderedComponent<BoatPage> page = boat.Page();

        Assert.Equal("boats/teal", page.Find("section[aria-labelledby=nothing-read] a.main").GetAttribute("href"));
        Assert.Contains("not read", page.Find(".verdict").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".thumb"));
    }

    [Fact]
    public async Task What_is_probable_comes_after_what_was_read()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(Today, 1);

        IRenderedComponent<BoatPage> page = boat.Page();

        page.WaitForElement(".causes");
        IElement asRead = page.Find("section[aria-labelledby=as-read]");
        Assert.Contains("Seat 1 starboard reads 1.0°", asRead.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("probably", asRead.TextContent.ToLowerInvariant(), StringComparison.Ordinal);
        page.WaitForAssertion(() => Assert.StartsWith(
            "round?boat=teal", page.Find("section[aria-labelledby=read-next] a.button").GetAttribute("href"), StringComparison.Ordinal));
    }
}
