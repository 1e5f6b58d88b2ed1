using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Exchanging;

public sealed class OneThreadTests(ServerOfTheRun server)
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task All_goes_on_one_thread_and_is_told_on_it()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        var told = new HashSet<int>();

        Task page = OneThread.RunAsync(async () =>
        {
            told.Add(Environment.CurrentManagedThreadId);
            phone.Exchange.Changed += _ => told.Add(Environment.CurrentManagedThreadId);
            await phone.ExchangeAsync();
            (await phone.ClubAsync(club)).Changed += _ => told.Add(Environment.CurrentManagedThreadId);
            Task[] at = [.. Enumerable.Range(0, 5).Select(i => phone.RecordAsync(club, Said.Hold($"{i}"))), phone.ExchangeAsync()];
            await Task.WhenAll(at);
            await phone.ShareAsync();
        });
        await page.WaitAsync(Longest, TestContext.Current.CancellationToken);

        Assert.Single(told);
        Assert.Equal(["0", "1", "2", "3", "4"], Said.Holds(await server.ClubAsync(club)));
        Assert.Equal(ExchangePhase.Shared, phone.Status.Phase);
    }
}
