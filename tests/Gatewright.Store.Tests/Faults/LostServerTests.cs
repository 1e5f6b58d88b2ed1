using Gatewright.Store.Faults;
using Gatewright.Store.Opening;
using Gatewright.Tests.Databases;
using Npgsql;

namespace Gatewright.Store.Tests.Faults;

/// <summary>The database's server goes down under those who append, and comes back.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class LostServerTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private static int Losses => LongRun.IsAsked ? 12 : 2;

    [Fact]
    public async Task What_was_acknowledged_outlives_the_server_and_appending_goes_on()
    {
        await using PostgresServer server = await PostgresServer.StartAsync();
        StoreLocation location = await server.NewDatabaseAsync();
        await StoreOpening.OpenAsync(location, Cancellation);
        await using AppendingProcess process = AppendingProcess.Start(location, 1);
        await process.UntilAsync(() => process.Acknowledged > 30);
        for (int loss = 0; loss < Losses; loss++)
        {
            int told = process.Told(StoreFault.Unreachable);
            await (loss % 2 == 0 ? server.StopAtOnceAsync() : server.KillAsync());
            await process.UntilAsync(() => process.Told(StoreFault.Unreachable) > told);
            await server.StartAgainAsync();
            long before = process.Acknowledged;
            await process.UntilAsync(() => process.Acknowledged > before + 30);
        }

        await process.KillAsync();

        // The connection that opened the store went with the server.
        await using (var old = new NpgsqlConnection(location.ConnectionString))
        {
            NpgsqlConnection.ClearPool(old);
        }

        await Acknowledged.IsKeptAsync(location, process.Acknowledged);
    }

    [Fact]
    public async Task A_server_that_is_gone_for_a_while_is_a_matter_of_trying_again()
    {
        await using PostgresServer server = await PostgresServer.StartAsync();
        StoreLocation location = await server.NewDatabaseAsync();
        await StoreOpening.OpenAsync(location, Cancellation);
        var journal = new JournalStore(location);
        await journal.AppendAsync("club", Made.Entries(1, 3), Cancellation);

        await server.StopAtOnceAsync();
        await Assert.ThrowsAsync<StoreUnavailableException>(() => journal.AppendAsync("club", Made.Entries(4, 3), Cancellation));
        await Assert.ThrowsAsync<StoreUnavailableException>(() => journal.ReadAsync("club", 0, 10, Cancellation));
        await Assert.ThrowsAsync<StoreUnavailableException>(() => journal.LastAsync("club", Cancellation));
        await server.StartAgainAsync();

        await EventuallyAsync(() => journal.AppendAsync("club", Made.Entries(1, 6), Cancellation));
        Assert.Equal(6, await Acknowledged.IsKeptAsync(location, 6));
    }

    /// <summary>Connections that were open when the server went fail once more each; a client tries again.</summary>
    private static async Task EventuallyAsync(Func<Task> call)
    {
        for (int left = 20; ; left--)
        {
            try
            {
                await call();
                return;
            }
            catch (StoreUnavailableException) when (left > 0)
            {
                await Task.Delay(50, Cancellation);
            }
        }
    }
}
