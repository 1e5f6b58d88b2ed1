using System.Net;
using System.Text.Json;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Boats;

/// <summary>
/// A boat's balance over HTTP against one that was worked out by hand. A pair, 4° read at every station of both gates, which is their target; the oar
/// of seat 2 leans 2° further. Nobody measured its rig: midway between the usual men's and women's pair the spread is 86.2 cm, the inboard 116.125 and
/// the oar 374.25, so the hands are 116.125 + 2 − 15 = 103.125 cm from the pin and the blade 374.25 − 116.125 − 2 − 27 = 229.125.
/// </summary>
/// <remarks>
/// The handle holds F sin P: its mean over a half sine is 2/π of F, 911.25 N, which is 580.12 N. The oar rolls by F h/o sin P (S + o cos θ), in the mean
/// over 55 to −35° 911.25 · 0.450082 · (0.862 · 2/π + 2.29125 · 0.591090) = 780.53 N m times sin P, where 0.591090 is the mean of
/// sin πt cos(55° − 90° t). Sines: 4° 0.0697565, 6° 0.1045285.
/// </remarks>
public sealed class BalanceTests(Stores stores)
{
    private const string Club = "upper-lock";

    // Simpson's rule is within a ten-thousandth, and the figures above were written down to five digits.
    private const double Part = 2e-4;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("men", 911.25)]
    [InlineData("women", 688.5)]
    public async Task The_figures_are_those_worked_out_by_hand(string pull, double peak)
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Pair()]);

        using JsonDocument told = await ToldAsync(keeper, "?pull=" + pull);
        JsonElement boat = told.RootElement.GetProperty("boats")[0];
        double factor = peak / 911.25;

        Assert.Equal((pull, peak), (told.RootElement.GetProperty("pull").GetString(), told.RootElement.GetProperty("peakNewtons").GetDouble()));
        AssertClose(factor * 27.14, Value(boat.GetProperty("meanRoll")));
        AssertGate(boat, 0, (1, "starboard"), factor * 40.467, factor * -10.086, factor * -54.447);
        AssertGate(boat, 1, (2, "port"), factor * 60.639, factor * 10.086, factor * 81.588);
    }

    [Fact]
    public async Task The_sleeve_that_is_off_is_named_first_with_the_oar_it_is_of()
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Pair()]);

        using JsonDocument told = await ToldAsync(keeper, "");
        JsonElement first = told.RootElement.GetProperty("boats")[0].GetProperty("forRoll");
        JsonElement turn = Assert.Single(first.GetProperty("sleeves").EnumerateArray());

        Assert.Equal((2, "port", "Oar 7"), (turn.GetProperty("seat").GetInt32(), turn.GetProperty("side").GetString(), turn.GetProperty("oar").GetString()));
        Assert.Equal(2, Value(turn.GetProperty("toBow")), 4);
        Assert.True(turn.GetProperty("probability").GetDouble() > first.GetProperty("gates")[0].GetProperty("probability").GetDouble());
        Assert.InRange(turn.GetProperty("fall").GetDouble(), 0.3 * first.GetProperty("now").GetDouble(), first.GetProperty("now").GetDouble());
    }

    [Fact]
    public async Task Of_a_boat_not_read_whole_nothing_is_told()
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Pair().Take(5)]);

        using JsonDocument told = await ToldAsync(keeper, "");
        JsonElement boat = told.RootElement.GetProperty("boats")[0];

        Assert.Equal(("Teal", "2-"), (boat.GetProperty("boat").GetString(), boat.GetProperty("class").GetString()));
        Assert.All(
            ["meanRoll", "roll", "gates", "forRoll", "forLoad"],
            key => Assert.Equal(JsonValueKind.Null, boat.GetProperty(key).ValueKind));
    }

    [Fact]
    public async Task A_pull_that_is_none_is_refused_with_those_there_are()
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Pair()]);

        HttpResponseMessage answer = await keeper.GetAsync($"/api/clubs/{Club}/boats/teal/balance?pull=oxen");

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("women-maximal", await answer.Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
    }

    private async Task<RunningServer> StartAsync() => await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));

    private static async Task<JsonDocument> ToldAsync(Visitor visitor, string query)
    {
        HttpResponseMessage answer = await visitor.GetAsync($"/api/clubs/{Club}/boats/teal/balance{query}");
        string text = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.True(answer.IsSuccessStatusCode, text);
        return JsonDocument.Parse(text);
    }

    private static void AssertGate(JsonElement boat, int at, (int, string) place, double handle, double fromMean, double roll)
    {
        JsonElement gate = boat.GetProperty("gates")[at];
        Assert.Equal(place, (gate.GetProperty("seat").GetInt32(), gate.GetProperty("side").GetString()!));
        AssertClose(handle, Value(gate.GetProperty("handle")));
        AssertClose(fromMean, Value(gate.GetProperty("fromMean")));
        AssertClose(roll, Value(gate.GetProperty("roll")));

        // Both gates are at their target: the sleeve is nothing that mending them takes away.
        Assert.Equal(0, Value(gate.GetProperty("rollOff")), 3);
    }

    private static void AssertClose(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * Part);

    private static double Value(JsonElement figure) => figure.GetProperty("value").GetDouble();

    private static IEnumerable<Entry> Pair()
    {
        yield return Entry(Set(Things.Boat, "teal", ("name", "Teal"), ("class", "2-")));
        yield return Entry(new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        foreach (Station station in new[] { Station.Catch, Station.Abeam, Station.Finish })
        {
            yield return Entry(new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4, station));
        }

        foreach (Station station in new[] { Station.Catch, Station.Abeam, Station.Finish })
        {
            yield return Entry(new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4, station));
        }

        foreach ((string oar, string seat, string side, decimal sleeve) in new[] { ("o6", "1", "starboard", 0m), ("o7", "2", "port", 2m) })
        {
            yield return Entry(Set(Things.Oar, oar, ("name", "Oar " + oar[1]), ("boat", "teal"), ("seat", seat), ("side", side)));
            yield return Entry(new OarRead(oar, OarItem.Sleeve, sleeve, Session: "s", Level: LevelBasis.Read, BowHigh: 0));
        }
    }

    private static ThingSet Set(string thing, string key, params (string Field, string? Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => f.Value));

    private static Entry Entry(Fact fact) => Written.By("m-keeper", Club, fact);
}
