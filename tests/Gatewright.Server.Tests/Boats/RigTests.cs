using System.Net;
using System.Text.Json;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Rigging;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Boats;

/// <summary>The rig of a boat over HTTP and on its page.</summary>
public sealed class RigTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_rig_is_told_with_its_targets_its_verdict_and_who_measured_it()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Measured()]);

        using JsonDocument told = JsonDocument.Parse(await TextAsync(keeper, $"/api/clubs/{Club}/boats/teal/rig"));
        JsonElement rig = told.RootElement.GetProperty("rigs")[0];
        JsonElement figure = rig.GetProperty("figures")[0];
        Assert.Equal(("women", "adjust"), (rig.GetProperty("crew").GetString(), rig.GetProperty("verdict").GetString()));
        Assert.Equal(("span", 161.9, "m-keeper"), (figure.GetProperty("measure").GetString(), figure.GetProperty("value").GetDouble(), figure.GetProperty("member").GetString()));
        Assert.Equal((158, "club"), (figure.GetProperty("target").GetProperty("value").GetDouble(), figure.GetProperty("target").GetProperty("source").GetString()));

        // The check has it too, and says nobody's name there.
        using JsonDocument check = JsonDocument.Parse(await TextAsync(keeper, $"/api/clubs/{Club}/check?boat=teal"));
        Assert.Equal(JsonValueKind.Null, check.RootElement.GetProperty("rigs")[0].GetProperty("figures")[0].GetProperty("member").ValueKind);
    }

    [Fact]
    public async Task The_boat_s_page_shows_the_rig()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Measured()]);

        string page = WebUtility.HtmlDecode(await TextAsync(keeper, $"/club/{Club}/boat?key=teal"));

        Assert.Contains("161.9 ± 0.2 cm", page, StringComparison.Ordinal);
        Assert.Contains("Seat 1: span 161.9 ± 0.2 cm, above 159 cm (target 158 cm, from 157 to 159; chance that it is outside: over 99 %).", page, StringComparison.Ordinal);
        Assert.Contains("by the targets for women", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_boat_s_page_shows_a_change_that_is_under_way_and_prints_its_sheet()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        var planned = new ChangePlanned(
            "c1", "teal", "Regatta", [new("Seat 1: set span to 158 cm.", 1, [], null, "span", 158, 0.3m), new("Seat 2: set span to 158 cm.", 2, [], null, "span", 158, 0.3m)],
            [new("span", 1, [0], null, 157, 159), new("span", 2, [1], null, 157, 159)]);
        await keeper.TakenAsync(Club, [.. Measured(), Entry(planned), Entry(new StepDone("c1", 0))]);

        string page = WebUtility.HtmlDecode(await TextAsync(keeper, $"/club/{Club}/boat?key=teal"));
        Assert.Contains("Change to Regatta", page, StringComparison.Ordinal);
        Assert.Contains("1 of 2 steps done", page, StringComparison.Ordinal);
        Assert.Contains("Done: Seat 1: set span to 158 cm.", page, StringComparison.Ordinal);
        Assert.Contains("To do: Seat 2: set span to 158 cm.", page, StringComparison.Ordinal);
        Assert.Contains("Seat 1, span: not read yet", page, StringComparison.Ordinal);
        Assert.Contains("Seat 2, span: after its steps are done", page, StringComparison.Ordinal);
        Assert.Equal("application/pdf", (await keeper.GetAsync($"/api/clubs/{Club}/print/jobs?job=c1")).Content.Headers.ContentType?.MediaType);

        await keeper.TakenAsync(Club, Entry(new JobDropped("c1")));
        Assert.DoesNotContain("Change to Regatta", await TextAsync(keeper, $"/club/{Club}/boat?key=teal"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_makes_no_sense_is_refused_with_what_is_wrong()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);

        HttpResponseMessage answer = await keeper.PushAsync(Club, Entry(new MeasureTaken("teal", "span", 1, 1.6m, "cm")));

        Assert.Contains("no span is that: give 120 to 190 cm", await answer.Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
    }

    private static IEnumerable<Entry> Measured()
    {
        yield return Entry(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2x", ["crew"] = "women" }));
        yield return Entry(TargetKey.ForCrew(BoatClass.Parse("2x"), Crew.Women, RigMeasure.Span).Set(158, 1, RigUnit.Centimetres));
        yield return Entry(new MeasureTaken("teal", "span", 1, 161.9m, "cm"));
    }

    private static Entry Entry(Fact fact) => Written.By("m-keeper", Club, fact);

    private static async Task<string> TextAsync(Visitor visitor, string path)
    {
        HttpResponseMessage answer = await visitor.GetAsync(path);
        string text = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.True(answer.IsSuccessStatusCode, text);
        return text;
    }
}
