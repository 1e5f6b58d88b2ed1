using AngleSharp.Html.Dom;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Joining;

/// <summary>Whoever tells of something finds it on the boat's page.</summary>
public sealed class ToldTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task What_was_told_of_a_boat_stands_on_its_page_for_the_crew_that_sees_it()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(
            Club,
            Written.Boat("m-keeper", Club, "teal", "Teal"),
            Written.By("m-keeper", Club, new MeasureTaken("teal", "spread", 1, 84, "cm", Date: new(2026, 5, 6))),
            Written.By("m-keeper", Club, new Reported("teal", ReportKind.Knock, 1, Side.Port, Date: new(2026, 5, 4))));
        (_, string secret) = await server.InviteAsync(Club, Role.Crew, ["teal"]);
        Visitor crew = server.Visitor();
        await Page.SendFormAsync(crew, $"/crew/{secret}", "crew");

        IHtmlDocument page = await Page.OpenAsync(crew, $"/club/{Club}/boat?key=teal");

        Assert.EndsWith(", 2026-05-04", Assert.Single(page.QuerySelectorAll("ul[aria-labelledby=told] li")).TextContent, StringComparison.Ordinal);
        Assert.Contains("last measured 2026-05-06", page.Body!.TextContent, StringComparison.Ordinal);
    }
}
