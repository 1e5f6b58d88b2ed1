using System.Net;
using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Journal.Facts;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Jobs;

/// <summary>The whole shed's plan, as the server gives it or does not.</summary>
public class ShedPlanTests
{
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

        await view.Find("#ask-plan").ClickAsync(new());

        string said = club.Page.Services.GetRequiredService<Texts<JobsTexts>>()[text];
        view.WaitForAssertion(() => Assert.Equal(said, view.Find("[role=status] b").TextContent));
    }

    [Fact]
    public async Task What_the_plan_cannot_know_is_counted_beside_it()
    {
        string plan = MendJson.Text(new ClubPlan(DateTimeOffset.UnixEpoch, 0, [], new(
            MendDocument.Name, CheckedStandard.Of(Standard.Club), null, [], [], [], new(0, 0, 0, 0, 0, 0, 0, 0, 0, true), [], [], [])));
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(
            "keeper", _ => new(HttpStatusCode.OK) { Content = new StringContent(plan) });
        await club.InHand.RecordAsync(new StockCounted("insert", 4, 2), new StockCounted("insert", 5, 1));
        IRenderedComponent<ShedPlanView> view = club.Page.Render<ShedPlanView>();

        await view.Find("#ask-plan").ClickAsync(new());

        string said = club.Page.Services.GetRequiredService<Texts<JobsTexts>>()["PlanWithout", 2];
        view.WaitForAssertion(() => Assert.Contains(said, view.Markup, StringComparison.Ordinal));
    }
}
