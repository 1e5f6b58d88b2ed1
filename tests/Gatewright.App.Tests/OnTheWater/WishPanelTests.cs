using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.OnTheWater;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.App.Tests.OnTheWater;

/// <summary>What somebody wants of a seat, and the least change that gives it, on the page of what a change does.</summary>
public sealed class WishPanelTests
{
    public WishPanelTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_wish_is_met_by_the_least_work_and_taken_over()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<ChangePage> page = club.Page.Render<ChangePage>();
        string before = page.Find("#work-through").GetAttribute("value")!;
        await WantAsync(page, "catch", "More", "1");

        // The stretcher is the least work, and moves the catch by itself.
        IElement way = page.Find("#wish-found .way");
        Assert.StartsWith("Work-through +", way.QuerySelector("b")!.TextContent, StringComparison.Ordinal);
        Assert.Matches(@"\+(0\.9|1\.0)\d ± 0\.\d\d°", way.TextContent);
        await page.PressAsync("#wish-found .take");

        Assert.NotEqual(before, page.Find("#work-through").GetAttribute("value"));
        Assert.Contains("The sliders stand so now.", page.Find("#wish-taken").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#wish-taken a"));
        Assert.Contains(page.FindAll(".figures small"), s => s.TextContent.Contains('±', StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_wish_beyond_the_bounds_is_told_with_the_bound_that_stops_it()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<ChangePage> page = club.Page.Render<ChangePage>();
        foreach (string measure in new[] { "spread", "oar-length", "work-through" })
        {
            await page.ChooseAsync($"#may-{measure}", false);
        }

        await page.TypeAsync("#may-inboard-most", "116.5");
        await WantAsync(page, "lever", "Less", "20");

        string told = page.Find("#wish-found").TextContent;
        Assert.Contains("out of reach", told, StringComparison.Ordinal);
        Assert.Contains("inboard, not above 116.5 cm", told, StringComparison.Ordinal);
        await page.PressAsync("#wish-found .take");

        // Steps are of whole millimetres, from where the inboard is: within one of the bound, and not beyond it.
        Assert.InRange(double.Parse(page.Find("#inboard").GetAttribute("value")!, CultureInfo.InvariantCulture), 116.4, 116.5);
    }

    [Theory]
    [InlineData("", "112")]
    [InlineData("-2", "112")]
    [InlineData("2", "119")]
    public async Task What_is_not_whole_is_not_searched(string amount, string least)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<ChangePage> page = club.Page.Render<ChangePage>();
        await page.TypeAsync("#may-inboard-least", least);
        await WantAsync(page, "load", "Less", amount);

        Assert.NotEmpty(page.Find(".wish [role=alert]").TextContent);
        Assert.NotEmpty(page.FindAll(".wish [aria-invalid]"));
        Assert.Empty(page.FindAll("#wish-found"));
    }

    [Fact]
    public async Task Two_wishes_say_what_each_step_does()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<ChangePage> page = club.Page.Render<ChangePage>();
        await page.PressAsync("#wish-more");
        await page.ChooseAsync("#wish-2-figure", "catch");
        await page.ChooseAsync("#wish-2-kind", "More");
        await page.TypeAsync("#wish-2-amount", "0");
        await WantAsync(page, "load", "Less", "1");

        Assert.Equal(2, page.Find("#wish-found .way").QuerySelectorAll(".each li").Length);
        Assert.Equal(2, page.Find("#wish-found .way b").TextContent.Split(", ").Length);
    }

    [Fact]
    public async Task A_boats_own_page_goes_on_to_plan_what_was_found()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        var lab = new StrokeLab(MeasuredSeat.Typed(SeatRig.Starting(RigTargets.Starting(BoatClass.Parse("8+"), crew: null))));
        IRenderedComponent<WishPanel> panel = club.Page.Render<WishPanel>(p => p.Add(w => w.Lab, lab).Add(w => w.Boat, "teal").Add(w => w.Seat, 3));
        await WantAsync(panel, "load", "Less", "1");
        await panel.PressAsync(".take");

        // The choice names the measure that the way sets, at what the sliders stand at now.
        string set = string.Create(CultureInfo.InvariantCulture, $"set:3:work-through={lab.Rig.Get(RigMeasure.WorkThrough).Centimetres:0.##}");
        Assert.Equal("boat/teal/change?to=" + Uri.EscapeDataString(set), panel.Find("#wish-taken a").GetAttribute("href"));
    }

    private static async Task WantAsync<T>(IRenderedComponent<T> page, string figure, string kind, string amount)
        where T : Microsoft.AspNetCore.Components.IComponent
    {
        await page.ChooseAsync("#wish-1-figure", figure);
        await page.ChooseAsync("#wish-1-kind", kind);
        await page.TypeAsync("#wish-1-amount", amount);
        await page.SendAsync(".wish form");
    }
}
