using System.Net;
using System.Text.Json;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Syncing;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Boats;

/// <summary>Gearing, what a change does and which change gives what is wanted, over HTTP.</summary>
public sealed class GearingTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_change_and_a_wish_are_answered()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await KeeperAsync(server);

        using JsonDocument told = JsonDocument.Parse(await TextAsync(
            await keeper.GetAsync($"/api/clubs/{Club}/boats/teal/gearing?seat=2&change=spread=-1&want=load%3D%2B1%25&allow=inboard&allow=work-through=10..20")));
        JsonElement root = told.RootElement;
        Assert.Equal(("gatewright.gearing/1", "Teal", 2), (root.GetProperty("format").GetString(), root.GetProperty("boat").GetString(), root.GetProperty("seat").GetInt32()));
        Assert.Equal(-1, root.GetProperty("change").GetProperty("together").GetProperty("steps")[0].GetProperty("by").GetDouble());
        JsonElement answers = root.GetProperty("wish").GetProperty("answers");
        JsonElement[] steps = [.. answers.EnumerateArray().SelectMany(a => a.GetProperty("steps").EnumerateArray())];
        Assert.NotEmpty(steps);
        Assert.All(
            steps,
            s => Assert.True(s.GetProperty("measure").GetString() is "inboard" or "work-through"));
    }

    [Theory]
    [InlineData("seat=3", "seat")]
    [InlineData("want=speed%3D5", "want")]
    [InlineData("change=span=1", "change")]
    [InlineData("allow=span", "allow")]
    [InlineData("want=load%3D2&want=catch%3D50&allow=inboard", "want")]
    public async Task What_makes_no_sense_is_refused_by_its_field(string query, string field)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await KeeperAsync(server);

        HttpResponseMessage answer = await keeper.GetAsync($"/api/clubs/{Club}/boats/teal/gearing?{query}");

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains($"\"{field}\"", await answer.Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Oars_that_go_together_are_told_where_they_are_asked_for()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await KeeperAsync(server);

        string text = await TextAsync(await keeper.GetAsync($"/api/clubs/{Club}/oars?match=2"));
        Assert.Contains("There are not 2 oars", text, StringComparison.Ordinal);
        Assert.Contains("\"match\": null", await TextAsync(await keeper.GetAsync($"/api/clubs/{Club}/oars")), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await keeper.GetAsync($"/api/clubs/{Club}/oars?match=0")).StatusCode);
    }

    [Fact]
    public async Task A_target_of_an_oar_no_longer_than_its_inboard_is_refused_with_its_place()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await KeeperAsync(server);
        var set = new ThingSet(Things.Target, "boat/teal/oar-length", new Dictionary<string, string?> { ["value"] = "110", ["tolerance"] = "1", ["unit"] = "cm" });

        PushAnswer answer = await keeper.TakenAsync(Club, Written.By("m-keeper", Club, set));

        Assert.Contains("no oar-length is that (boat/teal/oar-length): give 200 to 420 cm", answer.Refused.Single().Reasons.Single(), StringComparison.Ordinal);
        await TextAsync(await keeper.GetAsync($"/api/clubs/{Club}/boats/teal/gearing"));
    }

    private static async Task<Visitor> KeeperAsync(RunningServer server)
    {
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, Written.By("m-keeper", Club, new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" })));
        return keeper;
    }

    private static async Task<string> TextAsync(HttpResponseMessage answer)
    {
        string text = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.True(answer.IsSuccessStatusCode, text);
        return text;
    }
}
