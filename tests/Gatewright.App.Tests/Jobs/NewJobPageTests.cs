using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Jobs;

/// <summary>What somebody chose on the way to a job is what is planned, whatever comes to the boat meanwhile.</summary>
public class NewJobPageTests
{
    // The causes are worked out meanwhile, beside other tests.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    public NewJobPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_cause_that_was_chosen_stays_chosen_when_the_boat_is_judged_anew()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 1, Station.Catch),
            new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 7, Station.Finish),
            new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4, Station.Catch));
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("job/new?boat=teal&seat=1&side=starboard");
        IRenderedComponent<NewJobPage> page = club.Page.Render<NewJobPage>();
        page.WaitForAssertion(() => Assert.True(page.FindAll("[name=cause]").Count > 1), Longest);
        IElement wanted = page.FindAll("[name=cause]").Last(c => !c.HasAttribute("checked"));
        string words = Words(wanted);
        await page.InvokeAsync(() => wanted.Change(true));
        await page.InvokeAsync(() => page.FindAll("[name=remedy]")[^1].Change(true));
        Assert.Equal(words, Chosen(page));
        string how = page.Find("#remedy-title").TextContent;
        string before = Chances(page);

        await page.InvokeAsync(() => club.RecordElsewhereAsync(new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4.5m, Station.Abeam)));

        page.WaitForAssertion(() => Assert.NotEqual(before, Chances(page)), Longest);
        Assert.Equal(words, Chosen(page));
        Assert.Equal(how, page.Find("#remedy-title").TextContent);
    }

    private static string Chances(IRenderedComponent<NewJobPage> page) => string.Join(' ', page.FindAll(".cause b").Select(b => b.TextContent));

    private static string Chosen(IRenderedComponent<NewJobPage> page) => Words(page.FindAll("[name=cause]").Single(c => c.HasAttribute("checked")));

    private static string Words(IElement cause) => cause.ParentElement!.QuerySelector(".cause span")!.TextContent;
}
