using System.Text.Json;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Boats;

/// <summary>Why a boat is held, as the server says it: in English what the program says, as it was typed what somebody typed.</summary>
public sealed class HoldTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task A_boat_held_in_German_is_held_for_an_English_sentence()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(
            Club,
            Written.Boat("m-keeper", Club, "teal", "Teal"),
            Written.By("m-keeper", Club, new Held("teal", "Ein Stoß", new Dictionary<string, string> { ["en"] = "A knock" })),
            Written.By("m-keeper", Club, new Held("teal", "ein Riss")));

        foreach (string path in (string[])[$"/club/{Club}", $"/club/{Club}/boat?key=teal"])
        {
            Assert.Equal(
                ["Held ashore: A knock", "Held ashore: ein Riss"],
                (await Page.OpenAsync(keeper, path)).QuerySelectorAll(".held").Select(h => h.TextContent).Take(2));
        }

        string listed = await (await keeper.GetAsync($"/api/clubs/{Club}/boats")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        using var boats = JsonDocument.Parse(listed);
        Assert.Equal(
            ["A knock", "ein Riss"],
            boats.RootElement[0].GetProperty("holds").EnumerateArray().Select(h => h.GetString()!));
    }
}
