using System.Globalization;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.Oars;
using Gatewright.App.Keeping.Racks;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Keeping.Stores;
using Gatewright.App.Rig;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Frame;

/// <summary>A button that goes when it is pressed hands the focus on, wherever it stands.</summary>
public sealed class FocusGoesOnTests
{
    private const string OnPad = "#pad [tabindex='0']";

    public FocusGoesOnTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Where_all_is_shown_it_goes_to_the_first_that_was_not()
    {
        await using ClubOfTwo club = await WithTealAsync();
        await club.InHand.RecordAsync([.. Enumerable.Range(1, 8).Select(_ => new Reported("teal", ReportKind.Knock))]);
        IRenderedComponent<BoatPage> page = club.Page.Render<BoatPage>(p => p.Add(b => b.Key, "teal"));
        page.WaitForElement("section[aria-labelledby=happened] button.quiet");

        await page.PressAsync("section[aria-labelledby=happened] button.quiet");

        Assert.Equal("[aria-labelledby=happened] li:nth-child(7)", At(club, page));
    }

    [Fact]
    public async Task Where_all_reasons_are_shown_it_goes_to_the_gate_of_the_first_that_was_not()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync([.. BadEight(1)]);
        IRenderedComponent<BoatPage> page = club.Page.Render<BoatPage>(p => p.Add(b => b.Key, "b1"));
        page.WaitForElement("section[aria-labelledby=as-read] button.quiet");

        await page.PressAsync("section[aria-labelledby=as-read] button.quiet");

        Assert.Equal(".reasons li:nth-child(5) a", At(club, page));
    }

    [Fact]
    public async Task Where_a_racks_level_is_taken_back_it_goes_to_what_is_said_of_it()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Rack, "k", new Dictionary<string, string?> { ["name"] = "Left" }), new RackLevelRead("k", 0.5m, 0));
        IRenderedComponent<RackPage> page = club.Page.Render<RackPage>(p => p.Add(r => r.Key, "k"));

        await page.PressAsync("section[aria-labelledby=level] li button");

        page.WaitForState(() => page.FindAll("section[aria-labelledby=level] li button").Count == 0);
        Assert.Single(club.Page.JSInterop.Invocations["Blazor._internal.domWrapper.focus"]);
    }

    [Fact]
    public async Task Where_all_boats_that_wait_are_shown_it_goes_to_the_first_that_was_not()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync([.. Enumerable.Range(1, 8).SelectMany(BadEight)]);
        IRenderedComponent<JobsPage> page = club.Page.Render<JobsPage>();
        page.WaitForElement("#all-waiting");

        await page.PressAsync("#all-waiting");
        Assert.Equal("[aria-labelledby=waiting] > li:nth-child(7)", At(club, page));

        await page.PressAsync(".gates button.quiet");
        Assert.EndsWith(" li:nth-child(5) a", At(club, page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_is_asked_before_the_chances_are_set_back_stands_at_the_answer_that_keeps_them()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<LearntChances> page = club.Page.Render<LearntChances>();

        await page.PressAsync("#reset-chances");
        Assert.Equal("#keep-chances", At(club, page));
        await page.PressAsync("#keep-chances");
        Assert.Equal("#reset-chances", At(club, page));
        await page.PressAsync("#reset-chances");
        await page.PressAsync(".held .main");
        page.WaitForElement("[role=status]");
        Assert.Equal("#reset-chances", At(club, page));
    }

    [Fact]
    public async Task While_sleeves_are_read_it_goes_to_the_pad_and_after_the_last_to_the_set()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.OarSet, "s1", new Dictionary<string, string?> { ["name"] = "Blue" }),
            new ThingSet(Things.Oar, "o1", new Dictionary<string, string?> { ["name"] = "A", ["set"] = "s1" }));
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("oars/read?set=s1");
        IRenderedComponent<GunwalePage> page = club.Page.Render<GunwalePage>();

        await page.SendAsync();
        Assert.Equal(OnPad, At(club, page));
        await page.PressAsync("[data-value='0.5']");
        page.WaitForElement("#see-set");
        Assert.Equal("#see-set", At(club, page));
        await page.PressAsync(".under .row button");
        page.WaitForElement("#pad");
        Assert.Equal(OnPad, At(club, page));
        await page.TypeAsync("#typed", "0.3");
        await page.PressAsync("#record-typed");
        page.WaitForElement("#see-set");
        Assert.Equal("#see-set", At(club, page));
        await page.PressAsync(".under .row button");
        page.WaitForElement("#more");
        await page.PressAsync("#more");
        Assert.Equal("#boat", At(club, page));
    }

    [Fact]
    public async Task While_a_rig_is_measured_it_goes_to_the_pad_and_after_the_last_to_what_comes_then()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<MeasurePage> page = club.Page.Render<MeasurePage>(p => p.Add(r => r.Boat, "teal"));
        await page.SendAsync();
        Assert.Equal(OnPad, At(club, page));

        await page.TypeAsync("#typed", "86");
        await page.PressAsync("#record-typed");
        page.WaitForElement("#pad");
        Assert.Equal(OnPad, At(club, page));
        while (page.FindAll("#pad").Count > 0)
        {
            await page.PressAsync("#pad [data-value]");
        }

        Assert.Equal("#end-measuring", At(club, page));
        await page.PressAsync("#undo");
        page.WaitForElement("#pad");
        Assert.Equal(OnPad, At(club, page));
    }

    [Fact]
    public async Task What_is_typed_and_recorded_by_its_button_leaves_it_at_the_pad()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<ReadPage> page = club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "r").Add(r => r.Boat, "teal"));

        await page.TypeAsync("#typed", "4.2");
        await page.PressAsync("#record-typed");

        page.WaitForState(() => club.Page.JSInterop.Invocations["focus"].Count > 0);
        Assert.Equal(OnPad, At(club, page));
    }

    [Fact]
    public async Task A_part_that_is_counted_or_is_not_gives_it_back_to_what_asked()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(new StockCounted("insert", 4, 2));
        IRenderedComponent<StoresPage> page = club.Page.Render<StoresPage>();

        await page.PressAsync("#ask-count-insert-4");
        await page.PressAsync(".counting .quiet");
        Assert.Equal("#ask-count-insert-4", At(club, page));
        await page.PressAsync("#ask-count-insert-4");
        await page.TypeAsync("#count-insert-4", "3");
        await page.SendAsync(".counting form");
        page.WaitForState(() => page.FindAll(".counting").Count == 0);
        Assert.Equal(2, club.Page.JSInterop.Invocations["focus"].Count);
    }

    [Fact]
    public async Task A_target_that_is_taken_away_leaves_it_in_its_form()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<RigPage> page = club.Page.Render<RigPage>(p => p.Add(b => b.Boat, "teal"));
        await page.TypeAsync("#target-boat-teal-spread-value", "86");
        await page.TypeAsync("#target-boat-teal-spread-tolerance", "1");
        await page.SendAsync("form:has(#target-boat-teal-spread-value)");
        page.WaitForElement("#target-boat-teal-spread-clear");

        await page.PressAsync("#target-boat-teal-spread-clear");

        page.WaitForState(() => page.FindAll("#target-boat-teal-spread-clear").Count == 0);
        Assert.Equal("#target-boat-teal-spread-keep", At(club, page));
    }

    /// <summary>Where it went last: a place that is on the page and can have it.</summary>
    private static string At<T>(ClubOfTwo club, IRenderedComponent<T> page)
        where T : IComponent
    {
        string place = ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!).First(p => page.FindAll(p).Count > 0);
        AngleSharp.Dom.IElement found = page.Find(place);
        Assert.True(found.LocalName is "a" or "button" or "select" or "input" || found.HasAttribute("tabindex"), "What cannot have the focus is given it.");
        return place;
    }

    private static Fact[] BadEight(int number) =>
    [
        new ThingSet(Things.Boat, $"b{number}", new Dictionary<string, string?> { ["name"] = $"B{number}", ["class"] = "8+" }),
        new BoatLaid($"l{number}", $"b{number}", Lie.Upright, LevelBasis.ByEye),
        .. Enumerable.Range(1, 8).Select(seat => new ReadingTaken(
            $"l{number}", $"b{number}", ReadItem.Gate, seat, seat % 2 == 0 ? Side.Port : Side.Starboard, 0, Station.Abeam)),
    ];

    private static async Task<ClubOfTwo> WithTealAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("r"));
        return club;
    }
}
