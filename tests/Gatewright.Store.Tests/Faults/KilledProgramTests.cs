using Gatewright.Store.Opening;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Tests.Faults;

/// <summary>The program is killed, without a word, wherever it is.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class KilledProgramTests(Stores stores)
{
    private static int Kills => LongRun.IsAsked ? 60 : 3;

    [Theory]
    [EveryEngine]
    public async Task What_was_acknowledged_outlives_the_program(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        var chance = new Random(20260714);
        long there = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            await using AppendingProcess process = AppendingProcess.Start(location, there + 1);
            await process.UntilAsync(() => process.Acknowledged > 0);
            await Task.Delay(chance.Next(60), TestContext.Current.CancellationToken);
            await process.KillAsync();

            there = await Acknowledged.IsKeptAsync(location, process.Acknowledged);
        }

        Assert.InRange(there, Kills * Appender.Batch, int.MaxValue);
    }

    /// <summary>Killed from the very start: while it opens the store and makes its tables.</summary>
    [Theory]
    [EveryEngine]
    public async Task A_store_that_was_being_made_is_made_by_the_next(Engine engine)
    {
        var chance = new Random(20260715);
        for (int kill = 0; kill < Kills; kill++)
        {
            StoreLocation location = await stores.PlaceAsync(engine);
            await using AppendingProcess process = AppendingProcess.Start(location, 1);
            await Task.Delay(300 + chance.Next(700), TestContext.Current.CancellationToken);
            await process.KillAsync();

            await StoreOpening.OpenAsync(location, TestContext.Current.CancellationToken);
            await using StoreDb db = location.Open();
            Assert.Empty(await db.Database.GetPendingMigrationsAsync(TestContext.Current.CancellationToken));
            await Acknowledged.IsKeptAsync(location, process.Acknowledged);
        }
    }
}
