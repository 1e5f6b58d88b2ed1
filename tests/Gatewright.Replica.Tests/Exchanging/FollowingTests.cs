using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Exchanging;

public sealed class FollowingTests(ServerOfTheRun server)
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    [Fact]
    public async Task What_is_recorded_goes_by_itself_and_news_is_fetched()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        Phone other = await server.PhoneAsync(club, "m-2");
        await other.ExchangeAsync();
        await phone.ExchangeAsync();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var following = new Following(phone.Exchange, phone.Device);
        Task running = following.RunAsync(stop.Token);

        await phone.RecordAsync(club, Said.Hold("mine"));
        await UntilAsync(async () => (await server.ClubAsync(club)).Count == 1);
        await other.RecordAsync(club, Said.Hold("theirs"));
        await other.ShareAsync();
        await following.NewsAsync(club, 2);
        await UntilAsync(async () => (await phone.ClubAsync(club)).Number == 2);

        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => running);
    }

    [Fact]
    public async Task A_tap_without_a_network_tries_nothing_and_the_networks_return_does()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        phone.Network.IsOff = true;
        for (int i = 0; i < 8; i++)
        {
            // So that it waits for minutes.
            await phone.ExchangeAsync();
        }

        var following = new Following(phone.Exchange, phone.Device);
        phone.Network.Asked.Clear();
        Task running = following.RunAsync(stop.Token);
        await UntilAsync(() => Task.FromResult(phone.Network.Asked.Count == 1 && phone.Status.NextTry > phone.Clock.GetUtcNow().AddMinutes(1)));
        int asked = phone.Network.Asked.Count;
        for (int i = 0; i < 5; i++)
        {
            await phone.RecordAsync(club, Said.Hold($"{i}"));
        }

        Assert.Equal(asked, phone.Network.Asked.Count);
        Assert.Equal((ExchangePhase.Waiting, 5), (phone.Status.Phase, phone.Status.Unsent));
        phone.Network.IsOff = false;
        following.Wake();
        await UntilAsync(async () => (await server.ClubAsync(club)).Count == 5);
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => running);
    }

    private static async Task UntilAsync(Func<Task<bool>> holds)
    {
        using var enough = new CancellationTokenSource(Longest);
        while (!await holds())
        {
            await Task.Delay(10, enough.Token);
        }
    }
}
