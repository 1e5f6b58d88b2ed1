using Gatewright.Journal.Entries;
using Gatewright.Store.Checking;

namespace Gatewright.Store.Tests.Faults;

internal static class Acknowledged
{
    /// <summary>Everything acknowledged is there once, in order and to the byte; no batch is there in part; the store is sound.</summary>
    /// <returns>How many entries are there.</returns>
    public static async Task<long> IsKeptAsync(StoreLocation location, long acknowledged)
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        StoreReport report = await StoreCheck.RunAsync(location, cancellation: cancellation);
        Assert.Empty(report.Findings);
        IReadOnlyList<Numbered> all = await new JournalStore(location).ReadAsync("club", 0, int.MaxValue, cancellation);
        Assert.InRange(all.Count, acknowledged, acknowledged + Appender.Batch);
        Assert.Equal(0, all.Count % Appender.Batch);
        for (int i = 0; i < all.Count; i++)
        {
            Assert.Equal(EntryJson.ToLine(Made.Entry(i + 1)), EntryJson.ToLine(all[i].Entry));
        }

        return all.Count;
    }
}
