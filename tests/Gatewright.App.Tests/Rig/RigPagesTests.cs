using System.Globalization;
using Bunit;
using Gatewright.App.Rig;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.App.Tests.Rig;

public sealed class RigPagesTests
{
    /// <summary>What is looked for is said in English, whatever is spoken where the tests run.</summary>
    public RigPagesTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_figure_stands_beside_its_target_with_its_uncertainty_and_its_verdict_in_words()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        await rig.MeasureAsync("span", (1, 159), (2, 170));
        IRenderedComponent<RigPage> page = Page(rig);

        string span = page.Find("section[aria-labelledby=m-span]").TextContent;
        Assert.Contains("159.0 ± 0.2 cm", span, StringComparison.Ordinal);
        Assert.Contains("good", span, StringComparison.Ordinal);
        Assert.Contains("adjust", span, StringComparison.Ordinal);
        Assert.Contains("Target ", span, StringComparison.Ordinal);

        // 170 − 159; both share the tape's zero, so 0.2 · √2 = 0.28 is left of it.
        Assert.Contains("Seat 2 is 11.0 ± 0.3 cm more than seat 1", span, StringComparison.Ordinal);
        Assert.Contains("Seat 2: span 170.0 ± 0.2 cm, above", page.Find("section[aria-labelledby=rig-whole]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("safe ", page.Markup, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task What_is_the_same_of_every_figure_is_said_once()
    {
        await using RigInHand rig = await RigInHand.StartAsync("4x");
        await rig.MeasureAsync("span", (1, 159), (2, 160), (3, 161));
        AngleSharp.Dom.IElement span = Page(rig).Find("section[aria-labelledby=m-span]");

        Assert.Contains("Target ", span.QuerySelector(".shared")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("You, ", span.QuerySelector(".shared")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(span.QuerySelectorAll(".places small"));
    }

    [Fact]
    public async Task Of_a_measure_that_was_begun_it_says_where_it_is_still_to_be_taken()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        await rig.MeasureAsync("span", (2, 159));

        Assert.Contains("Still to be measured: span seat 1.", Page(rig).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rig_nobody_measured_says_so_and_shows_its_targets()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        IRenderedComponent<RigPage> page = Page(rig);

        Assert.Equal("not measured yet", page.Find("#rig-whole ~ .rig-verdict .word").TextContent);
        Assert.Contains("rigging survey", page.Find("section[aria-labelledby=m-span]").TextContent, StringComparison.Ordinal);
        Assert.Equal("boat/teal/rig/measure", page.Find("#measure-rig").GetAttribute("href"));
    }

    [Fact]
    public async Task A_boats_target_is_set_beside_the_one_behind_it_and_taken_away_again()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        IRenderedComponent<RigPage> page = Page(rig);

        await page.TypeAsync("#target-boat-teal-span-value", "161,5");
        await page.TypeAsync("#target-boat-teal-span-tolerance", "0.5");
        await page.SendAsync("form:has(#target-boat-teal-span-value)");

        RigTarget set = Target(rig, RigMeasure.Span);
        Assert.Equal((161.5, 0.5, RigSource.Boat), (set.Value, set.Tolerance, set.Source));
        Assert.Contains("Without it:", page.Find("section[aria-labelledby=m-span]").TextContent, StringComparison.Ordinal);

        await page.PressAsync("#target-boat-teal-span-clear");
        Assert.NotEqual(RigSource.Boat, Target(rig, RigMeasure.Span).Source);
    }

    [Fact]
    public async Task One_seat_is_given_a_target_of_its_own_that_stands_in_the_list_and_is_judged_by()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        await rig.MeasureAsync("span", (1, 159), (2, 165));
        IRenderedComponent<RigPage> page = Page(rig);
        AngleSharp.Dom.IElement span() => page.Find("section[aria-labelledby=m-span]");
        Assert.Contains("Seat 2: span 165", page.Find("section[aria-labelledby=rig-whole]").TextContent, StringComparison.Ordinal);

        await span().QuerySelector("#one-span")!.ChangeAsync(new() { Value = "1" });
        await page.TypeAsync("#one-target-boat-teal-span-2-value", "165");
        await page.TypeAsync("#one-target-boat-teal-span-2-tolerance", "1");
        await page.SendAsync("form:has(#one-target-boat-teal-span-2-value)");

        RigTarget set = Target(rig, RigMeasure.Span, new(2, null));
        Assert.Equal((165, 1, 2), (set.Value, set.Tolerance, set.Seat));
        Assert.NotEqual(RigSource.Boat, Target(rig, RigMeasure.Span, new(1, null)).Source);
        Assert.Contains("Seat 2 165 cm, from 164 to 166", Plain(span()), StringComparison.Ordinal);
        Assert.DoesNotContain("above", page.Find("section[aria-labelledby=rig-whole]").TextContent, StringComparison.Ordinal);

        await page.PressAsync("#target-boat-teal-span-2-clear");
        Assert.Null(Target(rig, RigMeasure.Span, new(2, null)).Seat);
        Assert.DoesNotContain("Seat 2 165 cm, from 164 to 166", Plain(span()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_class_is_given_a_target_for_one_side_of_one_seat_and_for_the_sides_of_one_seat()
    {
        await using RigInHand rig = await RigInHand.StartAsync("4x");
        IRenderedComponent<TargetsPage> page = rig.Club.Page.Render<TargetsPage>();
        await page.ChooseAsync("#class", "4x");
        string[] offered = [.. page.FindAll("#one-height option").Select(o => o.TextContent)];
        Assert.Equal(["Seat 1 port", "Seat 1 starboard", "Seat 1: starboard less port"], offered.Take(3));
        Assert.Equal(["Port: seat against seat", "Starboard: seat against seat"], offered.TakeLast(2));

        await KeepAsync("Seat 3 starboard", "3-starboard", "18,5", "0.5");
        await KeepAsync("Seat 3: starboard less port", "sides-3", "1,5", "0.5");

        RigTargets targets = BoatRig.Of(rig.Club.InHand.Club, RigInHand.Key).View.Targets!;
        RigTarget gate = targets.Find(RigMeasure.Height, RigAspect.Value, new(3, Side.Starboard))!;
        RigTarget sides = targets.Find(RigMeasure.Height, RigAspect.Sides, new(3, null))!;
        Assert.Equal((18.5, 3, Side.Starboard), (gate.Value, gate.Seat, gate.Side));
        Assert.Equal((1.5, 3, RigSource.Club), (sides.Value, sides.Seat, sides.Source));
        Assert.Null(targets.Find(RigMeasure.Height, RigAspect.Value, new(3, Side.Port))!.Seat);

        async Task KeepAsync(string place, string key, string value, string tolerance)
        {
            await page.ChooseAsync("#one-height", Array.IndexOf(offered, place).ToString(CultureInfo.InvariantCulture));
            await page.TypeAsync($"#one-target-crew-4x-any-height-{key}-value", value);
            await page.TypeAsync($"#one-target-crew-4x-any-height-{key}-tolerance", tolerance);
            await page.SendAsync($"form:has(#one-target-crew-4x-any-height-{key}-value)");
        }
    }

    [Fact]
    public async Task In_a_boat_of_one_seat_a_target_for_one_seat_is_not_asked_for()
    {
        await using RigInHand rig = await RigInHand.StartAsync("1x");

        Assert.Empty(Page(rig).FindAll(".single"));
    }

    [Theory]
    [InlineData("16", "1", "Give 120 to 190 cm: no such measure is anything else.")]
    [InlineData("160", "-1", "Give 0 or more.")]
    [InlineData("", "1", "Give 120 to 190 cm: no such measure is anything else.")]
    public async Task A_target_that_cannot_be_is_said_and_not_recorded(string value, string tolerance, string said)
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        IRenderedComponent<RigPage> page = Page(rig);

        await page.TypeAsync("#target-boat-teal-span-value", value);
        await page.TypeAsync("#target-boat-teal-span-tolerance", tolerance);
        await page.SendAsync("form:has(#target-boat-teal-span-value)");

        Assert.Single(page.FindAll("form:has(#target-boat-teal-span-value) [aria-invalid=true]"));
        Assert.Contains(said, page.Find("form:has(#target-boat-teal-span-value)").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(rig.Club.Recorded<ThingSet>(), s => s.Thing == Things.Target);
    }

    [Fact]
    public async Task The_crew_that_is_chosen_decides_the_targets()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        IRenderedComponent<RigPage> page = Page(rig);

        await page.ChooseAsync("#crew", "novice");

        Assert.Equal("novice", new ThingView(rig.Club.InHand.Club, Things.Boat, RigInHand.Key)["crew"]);
        Assert.Equal(RigTargets.Starting(BoatClass.Parse("2x"), Crew.Novice).Find(RigMeasure.Span, RigAspect.Value, new(1, null)), Target(rig, RigMeasure.Span));
    }

    [Fact]
    public async Task A_clubs_target_for_class_and_crew_is_that_of_each_such_boat()
    {
        await using RigInHand rig = await RigInHand.StartAsync();
        IRenderedComponent<TargetsPage> page = rig.Club.Page.Render<TargetsPage>();
        await page.ChooseAsync("#class", "2x");

        await page.TypeAsync("#target-crew-2x-any-span-value", "158");
        await page.TypeAsync("#target-crew-2x-any-span-tolerance", "1");
        await page.SendAsync("form:has(#target-crew-2x-any-span-value)");

        RigTarget set = Target(rig, RigMeasure.Span);
        Assert.Equal((158, 1, RigSource.Club), (set.Value, set.Tolerance, set.Source));
    }

    private static IRenderedComponent<RigPage> Page(RigInHand rig) => rig.Club.Page.Render<RigPage>(p => p.Add(r => r.Boat, RigInHand.Key));

    private static RigTarget Target(RigInHand rig, RigMeasure measure) => Target(rig, measure, new(1, null));

    private static RigTarget Target(RigInHand rig, RigMeasure measure, RigPlace place) =>
        BoatRig.Of(rig.Club.InHand.Club, RigInHand.Key).View.Targets!.Find(measure, RigAspect.Value, place)!;

    private static string Plain(AngleSharp.Dom.IElement element) => string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
