using System.Globalization;
using System.Reflection;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components.RenderTree;

namespace Gatewright.App.Tests.Boat;

/// <summary>Once a boat is held or released the page stands as before it was asked, and says what was done.</summary>
public sealed class HoldAshoreTests
{
    public HoldAshoreTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task The_form_for_a_hold_is_folded_again_once_it_is_recorded_and_not_before()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<BoatPage> page = await PageAsync(club);
        object before = Lid(club, page);

        await page.ChooseAsync("#hold-reason", " ");
        await page.SendAsync("form:has(#hold-reason)");
        Assert.Equal(before, Lid(club, page));

        await HoldAsync(page, "Loose stay");
        Assert.NotEqual(before, Lid(club, page));
        Assert.Equal("Add another reason to hold it", page.Find("details:has(#hold-reason) summary").TextContent);
        Assert.Null(page.Find("#hold-reason").GetAttribute("value"));
    }

    [Fact]
    public async Task The_focus_goes_to_the_heading_over_what_is_said_of_it()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<BoatPage> page = await PageAsync(club);

        await HoldAsync(page, "Loose stay");
        AssertAtHeading(club, page, 1);
        Assert.Contains("Held ashore.", page.Find(".done[role=status]").TextContent, StringComparison.Ordinal);

        await page.ChooseAsync("#release-reason", "Tightened");
        await page.SendAsync("form:has(#release-reason)");
        page.WaitForState(() => page.FindAll("#release-reason").Count == 0);
        AssertAtHeading(club, page, 2);
        Assert.Equal("Released.", page.Find(".done[role=status]").TextContent);
    }

    /// <summary>A browser takes the focus off a button that cannot be pressed.</summary>
    [Fact]
    public async Task While_it_is_recorded_its_button_stays_and_a_second_press_is_the_same_once_more()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<BoatPage> page = await PageAsync(club);
        var written = new TaskCompletionSource();
        club.Shelf.Writing = () => written.Task;
        await page.ChooseAsync("#hold-reason", "Loose stay");

        Task first = page.SendAsync("form:has(#hold-reason)");
        page.Render();
        Assert.False(page.Find("form:has(#hold-reason) button").HasAttribute("disabled"));
        Task second = page.SendAsync("form:has(#hold-reason)");
        written.SetResult();
        await Task.WhenAll(first, second);

        Assert.Single(club.InHand.Club.All(), r => r.Fact is Held);
    }

    private static void AssertAtHeading(ClubOfTwo club, IRenderedComponent<BoatPage> page, int times)
    {
        page.WaitForState(() => club.Page.JSInterop.Invocations["focus"].Count == times);
        Assert.Equal("#hold-release", ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!)[0]);
        Assert.Equal("-1", page.Find("#hold-release").GetAttribute("tabindex"));
    }

    private static async Task HoldAsync(IRenderedComponent<BoatPage> page, string why)
    {
        await page.ChooseAsync("#hold-reason", why);
        await page.SendAsync("form:has(#hold-reason)");
        page.WaitForElement("#held-ashore");
    }

    /// <summary>By what a browser knows the lid over the form again: under another it draws another lid, and draws it folded.</summary>
#pragma warning disable BL0006 // A page's markup does not tell one lid from another; what it is drawn from does.
    private static object Lid(ClubOfTwo club, IRenderedComponent<BoatPage> page)
    {
        var frames = (ArrayRange<RenderTreeFrame>)typeof(Renderer)
            .GetMethod("GetCurrentRenderTreeFrames", BindingFlags.Instance | BindingFlags.NonPublic)!
            .Invoke(club.Page.Renderer, [page.FindComponent<HoldAshore>().ComponentId])!;
        return Assert.Single(frames.Array.Take(frames.Count), f => f is { FrameType: RenderTreeFrameType.Element, ElementName: "details", ElementKey: not null }).ElementKey;
    }
#pragma warning restore BL0006

    private static async Task<IRenderedComponent<BoatPage>> PageAsync(ClubOfTwo club)
    {
        await club.InHand.RecordAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }));
        IRenderedComponent<BoatPage> page = club.Page.Render<BoatPage>(p => p.Add(b => b.Key, "teal"));
        page.WaitForElement("#hold-reason");
        return page;
    }
}
