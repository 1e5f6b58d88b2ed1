using System.Globalization;
using System.Net;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Views;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Jobs;

/// <summary>The whole shed's plan, as the server gives it or does not.</summary>
public class ShedPlanTests
{
    private static readonly ClubPlan Empty = new(DateTimeOffset.UnixEpoch, 0, [], new(
        MendDocument.Name, CheckedStandard.Of(Standard.Club), null, [], [], [], new(0, 0, 0, 0, 0, 0, 0, 0, 0, true), [], [], []));

    public ShedPlanTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData(401, "PlanSignedOut")]
    [InlineData(403, "PlanNotForYou")]
    [InlineData(404, "PlanNotForYou")]
    [InlineData(429, "PlanLater")]
    [InlineData(503, "PlanLater")]
    [InlineData(500, "PlanFailed")]
    [InlineData(0, "PlanNotReached")]
    public async Task Why_there_is_none_is_said_as_it_is(int status, string text)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(
            "keeper", _ => status == 0 ? throw new HttpRequestException("no way there") : new((HttpStatusCode)status));
        IRenderedComponent<ShedPlanView> view = club.Page.Render<ShedPlanView>();

        await view.PressAsync("#ask-plan");

        string said = club.Page.Services.GetRequiredService<Texts<JobsTexts>>()[text];
        view.WaitForAssertion(() => Assert.Equal(said, view.Find("[role=status] b").TextContent));
    }

    [Fact]
    public async Task A_job_of_the_plan_is_taken_with_its_parts_and_not_twice()
    {
        PlannedJob job = new(
            2, "port", "adjust", ["plate-washer", "insert-swap"], "Fit 2 mm washers, then a 4° insert.", [new("washer", 2), new("washer", 2), new("insert", 4)], 20, [],
            "rigger", false, false, [new("catch", 4.04, 0.4, 3.1, 4.9)]);
        string plan = MendJson.Text(new ClubPlan(DateTimeOffset.UnixEpoch, 0, ["teal"], new(
            MendDocument.Name, CheckedStandard.Of(Standard.Club), null,
            [new("Teal", "2-", "adjust", false, "mended", null, 20, [job], [], [], "mended", null)], [], [], new(1, 0, 1, 0, 0, 0, 1, 3, 20, true), [], [], [])));
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(
            "keeper", _ => new(HttpStatusCode.OK) { Content = new StringContent(plan) });
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }), new StockCounted("washer", 2, 3), new StockCounted("insert", 4, 2));
        IRenderedComponent<JobsPage> page = club.Page.Render<JobsPage>();
        await page.PressAsync("#ask-plan");
        page.WaitForElement("button.take");
        Assert.Equal("job/new?boat=teal&seat=2&side=port", page.Find(".planned a").GetAttribute("href"));

        await page.PressAsync("button.take");

        page.WaitForAssertion(() => Assert.Empty(page.FindAll("button.take")));
        IElement told = page.Find(((string[])club.Page.JSInterop.Invocations["focus"].Single().Arguments[0]!)[0]);
        Assert.Equal(("Among the jobs.", "-1"), (told.TextContent, told.GetAttribute("tabindex")));
        JobPlanned taken = ClubJobs.Of(club.InHand.Club).Open.Single().Plan;
        Assert.Equal((Cause.Rigger, "plate-washer + insert-swap", 2, Side.Port), (taken.Cause, taken.Remedy, taken.Seat, taken.Side));
        Assert.Equal([new PartUsed("washer", 2, 2), new PartUsed("insert", 4, 1)], taken.Parts);
        Assert.Equal([new ExpectedAt(Station.Catch, 4.0m, 3.1m, 4.9m)], taken.Expected);
        Assert.Equal([(1, "insert"), (2, "washer")], StoreShelf.Of(club.InHand.Club).Select(l => (l.Wanted, l.Part)));
        Assert.Contains("0 of 1 steps done", page.Find("#open-list").TextContent, StringComparison.Ordinal);
    }

    /// <summary>A browser takes the focus off a button that cannot be pressed.</summary>
    [Fact]
    public async Task While_a_plan_is_made_its_button_stays_and_asks_for_no_other()
    {
        int asked = 0;
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _ =>
        {
            asked++;
            return new(HttpStatusCode.OK) { Content = new StringContent(MendJson.Text(Empty)) };
        });
        var written = new TaskCompletionSource();
        club.Shelf.Writing = () => written.Task;
        IRenderedComponent<ShedPlanView> view = club.Page.Render<ShedPlanView>();

        Task first = view.PressAsync("#ask-plan");
        view.WaitForAssertion(() => Assert.NotEmpty(view.FindAll("[role=status] p")));
        Assert.False(view.Find("#ask-plan").HasAttribute("disabled"));
        await view.PressAsync("#ask-plan");
        written.SetResult();
        await first;

        Assert.Equal(1, asked);
    }

    [Fact]
    public async Task What_the_plan_cannot_know_is_counted_beside_it()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(
            "keeper", _ => new(HttpStatusCode.OK) { Content = new StringContent(MendJson.Text(Empty)) });
        await club.InHand.RecordAsync(new StockCounted("insert", 4, 2), new StockCounted("insert", 5, 1));
        IRenderedComponent<ShedPlanView> view = club.Page.Render<ShedPlanView>();

        await view.PressAsync("#ask-plan");

        string said = club.Page.Services.GetRequiredService<Texts<JobsTexts>>()["PlanWithout", 2];
        view.WaitForAssertion(() => Assert.Contains(said, view.Markup, StringComparison.Ordinal));
    }
}
