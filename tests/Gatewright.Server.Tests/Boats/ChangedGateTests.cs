using System.Text.Json;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Boats;

/// <summary>A boat that a gate keeps ashore which was mended and not read since, as the server says it: for people and for programs.</summary>
public sealed class ChangedGateTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task Its_page_and_its_document_say_what_was_done_and_that_it_is_to_be_read_again()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        DateTimeOffset begin = DateTimeOffset.UtcNow.AddHours(-1);
        Fact[] told =
        [
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            .. Stations.All.Select(at => new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Port, -3, at)),
            .. Stations.All.Select(at => new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4, at)),
            new GateMended("teal", 1, Side.Port),
        ];
        await keeper.TakenAsync(Club, [.. told.Select((fact, i) => Written.By("m-keeper", Club, fact, begin.AddMinutes(i)))]);

        // The list for programs, the shed's page and the boat's say one thing of it.
        using var listed = JsonDocument.Parse(await (await keeper.GetAsync($"/api/clubs/{Club}/boats")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        JsonElement teal = Assert.Single(listed.RootElement.EnumerateArray());
        Assert.Equal(("read-again", true), (teal.GetProperty("verdict").GetString(), teal.GetProperty("staysAshore").GetBoolean()));
        string shed = (await Page.OpenAsync(keeper, $"/club/{Club}")).QuerySelector("main")!.TextContent;
        Assert.Contains("1 to be read again. 1 to stay ashore.", shed, StringComparison.Ordinal);
        Assert.DoesNotContain("good", shed, StringComparison.Ordinal);
        string described = await (await keeper.GetAsync("/openapi/v1.json")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("read-again where these are good", described, StringComparison.Ordinal);

        string page = (await Page.OpenAsync(keeper, $"/club/{Club}/boat?key=teal")).QuerySelector("main")!.TextContent;
        Assert.Contains("to be read again", page, StringComparison.Ordinal);
        Assert.Contains("Seat 1 port was mended on", page, StringComparison.Ordinal);
        Assert.Contains("not out on the water until it is read again", page, StringComparison.Ordinal);
        Assert.DoesNotContain("mended and read again", page, StringComparison.Ordinal);

        string checkedBoat = await (await keeper.GetAsync($"/api/clubs/{Club}/check?boat=teal")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        using var document = JsonDocument.Parse(checkedBoat);
        JsonElement boat = document.RootElement.GetProperty("boats")[0];
        Assert.True(boat.GetProperty("staysAshore").GetBoolean());
        Assert.Equal("mending", boat.GetProperty("changed")[0].GetProperty("by").GetString());
    }
}
