using System.Net;
using System.Text.Json;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Planning;

/// <summary>Changes of rig, comparisons and the road, as the server tells them.</summary>
public sealed class ChangeTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_boat_is_changed_to_the_rig_of_a_day_and_compared_with_it()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Pair()]);

        JsonElement change = await GetAsync(keeper, "teal/change?toDay=2026-05-04&language=de");
        JsonElement step = Assert.Single(change.GetProperty("steps").EnumerateArray());
        Assert.Equal("Platz 2: Dollenabstand vom Kiel von 88,0 cm auf 86,0 cm stellen.", step.GetProperty("instruction").GetString());

        Assert.Equal("Teal, 04.05.2026", change.GetProperty("to").GetString());

        JsonElement compared = await GetAsync(keeper, "teal/compare?on=2026-05-04");
        Assert.Equal(
            ["differs", "not-taken-since"],
            compared.GetProperty("items").EnumerateArray().Select(i => i.GetProperty("as").GetString()!).Order(StringComparer.Ordinal));
        Assert.Equal(2, (await GetAsync(keeper, "teal/travel")).GetProperty("off").GetArrayLength());
    }

    [Theory]
    [InlineData("teal/change", HttpStatusCode.BadRequest)]
    [InlineData("teal/change?toDay=yesterday", HttpStatusCode.BadRequest)]
    [InlineData("teal/change?toCrew=giants", HttpStatusCode.BadRequest)]
    [InlineData("teal/change?toBoat=wren", HttpStatusCode.NotFound)]
    [InlineData("teal/change?to=none", HttpStatusCode.NotFound)]
    [InlineData("wren/change?toCrew=men", HttpStatusCode.NotFound)]
    [InlineData("teal/compare", HttpStatusCode.BadRequest)]
    [InlineData("wren/travel", HttpStatusCode.NotFound)]
    public async Task What_cannot_be_is_refused(string path, HttpStatusCode status)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Pair()]);

        Assert.Equal(status, (await keeper.GetAsync($"/api/clubs/{Club}/boats/{path}")).StatusCode);
    }

    private static async Task<JsonElement> GetAsync(Visitor visitor, string path)
    {
        HttpResponseMessage answer = await visitor.GetAsync($"/api/clubs/{Club}/boats/{path}");
        string text = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.True(answer.IsSuccessStatusCode, text);
        return JsonDocument.Parse(text).RootElement;
    }

    private static IEnumerable<Entry> Pair() => new Fact[]
    {
        new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new MeasureTaken("teal", "spread", 1, 86, "cm", Date: new(2026, 5, 4)),
        new MeasureTaken("teal", "spread", 2, 86, "cm", Date: new(2026, 5, 4)),
        new MeasureTaken("teal", "spread", 2, 88, "cm", Date: new(2026, 6, 1)),
    }.Select(f => Written.By("m-keeper", Club, f));
}
