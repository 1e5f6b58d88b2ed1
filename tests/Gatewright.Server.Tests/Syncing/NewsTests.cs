using System.Globalization;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Syncing;

/// <summary>Devices hear that a journal has grown.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class NewsTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Member = "m-keeper";

    // Less than what a stop waits for requests that do not end, more than any of this takes.
    private static readonly TimeSpan Enough = TimeSpan.FromSeconds(20);

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    /// <summary>The clock's timers stand still, so what is heard was told, not found by looking now and then.</summary>
    [Fact]
    public async Task Growth_through_this_server_is_told_at_once()
    {
        var still = new SetClock(ticks: false);
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite), o => o with { Clock = still });
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        await keeper.TakenAsync(Club, Written.Hold(Member, Club), Written.Hold(Member, Club));
        using StreamReader news = await FollowAsync(keeper);

        Assert.Equal(2, await NextAsync(news));
        await keeper.TakenAsync(Club, Written.Hold(Member, Club));
        Assert.Equal(3, await NextAsync(news));
    }

    [Theory, EveryEngine]
    public async Task Growth_through_another_server_is_found(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        await using RunningServer one = await RunningServer.StartAsync(location);
        await using RunningServer other = await RunningServer.StartAsync(location);
        Visitor keeper = await one.MemberAsync(Club, Member, Role.Keeper);
        var there = new Visitor(other.Address);
        await there.SignInAsync($"{Member}.{Club}", RunningServer.Password);
        using StreamReader news = await FollowAsync(keeper);
        Assert.Equal(0, await NextAsync(news));

        await there.TakenAsync(Club, Written.Hold(Member, Club));

        Assert.Equal(1, await NextAsync(news));
    }

    [Fact]
    public async Task News_of_one_club_is_not_told_to_another()
    {
        await using RunningServer server = await RunningServer.StartAsync(
            await stores.NewAsync(Engine.Sqlite), o => o with { Clock = new SetClock(ticks: false) });
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Visitor other = await server.MemberAsync("weir-side", "m-other", Role.Keeper);
        using StreamReader news = await FollowAsync(keeper);
        Assert.Equal(0, await NextAsync(news));

        await other.TakenAsync("weir-side", Enumerable.Range(0, 5).Select(_ => Written.Hold("m-other", "weir-side")));
        await keeper.TakenAsync(Club, Written.Hold(Member, Club));

        Assert.Equal(1, await NextAsync(news));
    }

    [Fact]
    public async Task A_server_that_stops_ends_it_and_does_not_wait()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        using StreamReader news = await FollowAsync(keeper);
        Assert.Equal(0, await NextAsync(news));

        await server.StopAsync().WaitAsync(Enough, Cancellation);

        Assert.Equal(string.Empty, await news.ReadToEndAsync(Cancellation).WaitAsync(Enough, Cancellation));
    }

    private static async Task<StreamReader> FollowAsync(Visitor visitor)
    {
        HttpResponseMessage answer = await visitor.Client.GetAsync(
            $"/api/clubs/{Club}/news", HttpCompletionOption.ResponseHeadersRead, Cancellation);
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType?.MediaType);
        return new(await answer.Content.ReadAsStreamAsync(Cancellation));
    }

    /// <summary>The number of the next event, by the format of the HTML standard, section 9.2.</summary>
    private static async Task<long> NextAsync(StreamReader news)
    {
        long? number = null;
        bool isGrowth = false;
        while (await news.ReadLineAsync(Cancellation).AsTask().WaitAsync(Enough, Cancellation) is { } line)
        {
            if (line.Length == 0 && number is { } heard)
            {
                Assert.True(isGrowth);
                return heard;
            }

            isGrowth |= line == "event: grown";
            number = line.StartsWith("data: ", StringComparison.Ordinal) ? long.Parse(line[6..], CultureInfo.InvariantCulture) : number;
        }

        throw new InvalidOperationException("The news ended.");
    }
}
