using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Planning;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Planning;

/// <summary>The whole shed's plan, made on the server.</summary>
public sealed class PlanTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    /// <summary>Two boats want the one insert there is: the one below its floor gets it, the other one is bought.</summary>
    [Fact]
    public async Task The_part_there_is_goes_where_it_brings_a_boat_off_its_floor_and_the_other_is_to_be_bought()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Boat("teal", 1.5m), .. Boat("heron", 2.5m), Entry(new StockCounted("insert", 4, 1))]);

        ClubPlan plan = await PlanAsync(keeper, "en");

        Assert.Equal(["teal", "heron"], plan.Keys);
        Assert.Equal(["teal", "heron"], plan.Plan.Boats.Select(b => b.Boat));
        Assert.Equal(["mended", "left"], plan.Plan.Boats.Select(b => b.Outcome));
        Assert.Equal([new PlannedSupply("insert", 4, 1)], plan.Plan.TakeAlong);
        Assert.Equal([new PlannedSupply("insert", 4, 1)], plan.Plan.Shopping);
        Assert.True(plan.Plan.Totals.Proven);
    }

    [Fact]
    public async Task It_is_told_in_the_language_asked_for_and_made_anew_when_the_club_has_grown()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, [.. Boat("teal", 1.5m), Entry(new StockCounted("insert", 4, 1))]);

        ClubPlan english = await PlanAsync(keeper, "en");
        ClubPlan german = await PlanAsync(keeper, "de");
        Assert.Equal(english.Made, german.Made);
        Assert.Contains("insert", english.Plan.Boats[0].Jobs[0].Instruction, StringComparison.Ordinal);
        Assert.Contains("Einsatz", german.Plan.Boats[0].Jobs[0].Instruction, StringComparison.Ordinal);

        await keeper.TakenAsync(Club, Entry(new StockCounted("insert", 4, 0)));

        ClubPlan grown = await PlanAsync(keeper, "en");
        Assert.True(grown.Number > english.Number);
        Assert.Empty(grown.Plan.TakeAlong);
        Assert.Equal([new PlannedSupply("insert", 4, 1)], grown.Plan.Shopping);
    }

    [Fact]
    public async Task A_club_without_a_reading_has_an_empty_plan()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, Written.Boat("m-keeper", Club, "teal", "Teal"));

        Assert.Empty((await PlanAsync(keeper, "xx")).Plan.Boats);
    }

    [Fact]
    public async Task A_club_that_asks_for_plan_after_plan_is_told_to_wait_and_another_is_not()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor other = await server.MemberAsync("weir-side", "m-other", Role.Keeper);
        for (int i = 0; i < PlanTurns.AMinute; i++)
        {
            await keeper.TakenAsync(Club, Entry(new StockCounted("insert", 4, i)));
            await PlanAsync(keeper, "en");
        }

        // What stands is told as often as anybody asks, in any language.
        Assert.Equal((await PlanAsync(keeper, "en")).Made, (await PlanAsync(keeper, "de")).Made);
        await keeper.TakenAsync(Club, Entry(new StockCounted("insert", 4, 9)));
        HttpResponseMessage refused = await keeper.GetAsync($"/api/clubs/{Club}/plan");

        Assert.Equal(System.Net.HttpStatusCode.TooManyRequests, refused.StatusCode);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType?.MediaType);
        Assert.InRange(refused.Headers.RetryAfter!.Delta!.Value, TimeSpan.FromSeconds(1), TimeSpan.FromMinutes(1));
        Assert.True((await other.GetAsync("/api/clubs/weir-side/plan")).IsSuccessStatusCode);
    }

    [Fact]
    public async Task Whoever_waits_too_long_for_the_plans_of_others_is_told_so_and_the_next_has_its_turn()
    {
        using var turns = new PlanTurns(TimeSpan.FromMilliseconds(50));
        using (await turns.EnterAsync("upper-lock", Cancellation))
        {
            PlanLaterException later = await Assert.ThrowsAsync<PlanLaterException>(() => turns.EnterAsync("weir-side", Cancellation));
            Assert.Equal(503, later.Status);
        }

        (await turns.EnterAsync("weir-side", Cancellation)).Dispose();
    }

    private static async Task<ClubPlan> PlanAsync(Visitor visitor, string language)
    {
        HttpResponseMessage answer = await visitor.GetAsync($"/api/clubs/{Club}/plan?language={language}");
        string text = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.True(answer.IsSuccessStatusCode, text);
        return MendJson.Read(text)!;
    }

    /// <summary>A single of which one gate reads low at every station.</summary>
    private static IEnumerable<Journal.Entries.Entry> Boat(string key, decimal low)
    {
        yield return Entry(new ThingSet(Things.Boat, key, new Dictionary<string, string?> { ["name"] = key, ["class"] = "1x" }));
        yield return Entry(new BoatLaid("lie-" + key, key, Lie.Upright, LevelBasis.Read, 0, 0));
        foreach (Side side in Enum.GetValues<Side>())
        {
            foreach (Station station in Stations.All)
            {
                yield return Entry(new ReadingTaken("lie-" + key, key, ReadItem.Gate, 1, side, side == Side.Port ? 4 : low, station));
            }
        }
    }

    private static Journal.Entries.Entry Entry(Fact fact) => Written.By("m-keeper", Club, fact);
}
