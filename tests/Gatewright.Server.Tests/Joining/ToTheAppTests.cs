using AngleSharp.Html.Dom;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Joining;

/// <summary>Whoever has come in finds the app first: it alone holds boats ashore, releases and notes.</summary>
public sealed class ToTheAppTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task Joining_ends_at_a_page_whose_first_link_opens_the_app()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        (_, string secret) = await server.InviteAsync(Club, Role.Coach);
        Visitor coach = server.Visitor();

        HttpResponseMessage joined = await Page.SendFormAsync(
            coach, $"/join/{secret}", "join", ("Form.Name", "coach"), ("Form.DisplayName", "Coach"), ("Form.Password", "four dry oars stand"));
        HttpResponseMessage home = await coach.GetAsync(joined.Headers.Location!.ToString());
        IHtmlDocument page = await Page.OpenAsync(coach, home.Headers.Location!.ToString());

        Assert.Equal("/app/", page.QuerySelector("main a")?.GetAttribute("href"));
    }
}
