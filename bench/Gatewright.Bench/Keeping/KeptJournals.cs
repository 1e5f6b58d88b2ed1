using System.Diagnostics;
using System.Globalization;
using Gatewright.Bench.Reporting;
using Gatewright.Journal.Entries;
using Gatewright.Store;
using Gatewright.Store.Opening;
using Gatewright.Tests.Databases;

namespace Gatewright.Bench.Keeping;

/// <summary>Appending beside bare inserts of the same rows, and reading a journal of 10,000 entries, on both engines.</summary>
internal sealed class KeptJournals : IBench
{
    private const int Entries = 20_000;
    private const int Batch = 500;
    private const int Pulled = 10_000;
    private const int Runs = 5;

    public IEnumerable<Measured> Measure() => MeasureAsync().GetAwaiter().GetResult();

    private static async Task<IReadOnlyList<Measured>> MeasureAsync()
    {
        string folder = Directory.CreateTempSubdirectory("gw-bench-").FullName;
        await using PostgresServer server = await PostgresServer.StartAsync();
        try
        {
            int files = 0;
            return
            [
                .. await OnAsync("SQLite", () => Task.FromResult(StoreLocation.File(Path.Combine(folder, $"{files++}.db")))),
                .. await OnAsync("PostgreSQL", server.NewDatabaseAsync),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<IReadOnlyList<Measured>> OnAsync(string engine, Func<Task<StoreLocation>> place)
    {
        Entry[][] batches = [.. BenchEntries.Make(Entries).Chunk(Batch)];
        var appends = new List<double>();
        var bare = new List<double>();
        StoreLocation kept = await NewAsync(place);

        // Turn by turn, so that what else the machine does falls on both; the first turn only warms up.
        for (int run = 0; run <= Runs; run++)
        {
            StoreLocation one = await NewAsync(place);
            long start = Stopwatch.GetTimestamp();
            BareInserts.Run(one, batches);
            double bareSeconds = Stopwatch.GetElapsedTime(start).TotalSeconds;

            kept = await NewAsync(place);
            start = Stopwatch.GetTimestamp();
            var journal = new JournalStore(kept);
            foreach (Entry[] batch in batches)
            {
                await journal.AppendAsync(BenchEntries.Club, batch);
            }

            if (run > 0)
            {
                bare.Add(bareSeconds);
                appends.Add(Stopwatch.GetElapsedTime(start).TotalSeconds);
            }
        }

        double pull = await PullAsync(kept);
        double ratio = Middle(bare) / Middle(appends);
        return
        [
            new(Target.AtLeast(0.5, "of bare inserts", $"Appends in batches, {engine}"), ratio, string.Create(
                CultureInfo.InvariantCulture,
                $"medians of {Runs}; {Entries / Middle(appends):0} and {Entries / Middle(bare):0} entries a second, {Batch} a commit")),
            new(Target.AtMost(1, "s", $"10,000 entries pulled, {engine}"), pull, $"median of {Runs}; pages of 1000, as JSON lines"),
        ];
    }

    private static async Task<double> PullAsync(StoreLocation location)
    {
        var journal = new JournalStore(location);
        var seconds = new List<double>();
        for (int run = 0; run <= Runs; run++)
        {
            long start = Stopwatch.GetTimestamp();
            long after = 0;
            long bytes = 0;
            while (after < Pulled)
            {
                IReadOnlyList<Numbered> page = await journal.ReadAsync(BenchEntries.Club, after, 1000);
                bytes += page.Sum(n => EntryJson.ToLine(n.Entry).LongLength);
                after = page[^1].Number;
            }

            if (run > 0 && bytes > 0)
            {
                seconds.Add(Stopwatch.GetElapsedTime(start).TotalSeconds);
            }
        }

        return Middle(seconds);
    }

    private static async Task<StoreLocation> NewAsync(Func<Task<StoreLocation>> place)
    {
        StoreLocation location = await place();
        await StoreOpening.OpenAsync(location);
        return location;
    }

    private static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
