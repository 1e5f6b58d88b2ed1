using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Gatewright.Bench.Reporting;
using Gatewright.Journal.Entries;
using Gatewright.Store;
using Gatewright.Tests.Databases;

namespace Gatewright.Bench.Serving;

/// <summary>
/// A club of 200,000 entries over HTTP, on both engines: the published server started on it with and without a snapshot,
/// what a phone pulls and pushes, and how long readers wait while many ask.
/// </summary>
internal sealed class ServedClub : IBench
{
    private const int Starts = 3;
    private const int Tail = 1000;
    private const int Pulled = 10_000;
    private const int PullPage = 2000;
    private const int ASecond = 200;
    private const int Seconds = 10;

    // One account may ask 600 times at once and 300 times a second after that.
    private const int Alone = 400;
    private const int Batch = 100;
    private const int Batches = 60;

    private int _pushed = ServedJournal.Entries;

    public IEnumerable<Measured> Measure() => MeasureAsync().GetAwaiter().GetResult();

    private static async Task<IReadOnlyList<Measured>> MeasureAsync()
    {
        RunningServer.Publish();
        string folder = Directory.CreateTempSubdirectory("gw-bench-").FullName;
        await using PostgresServer postgres = await PostgresServer.StartAsync();
        try
        {
            return
            [
                .. await new ServedClub().OnAsync("SQLite", StoreLocation.File(Path.Combine(folder, "gatewright.db")), folder),
                .. await new ServedClub().OnAsync("PostgreSQL", await postgres.NewDatabaseAsync(), folder),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private async Task<IReadOnlyList<Measured>> OnAsync(string engine, StoreLocation location, string folder)
    {
        ServedJournal journal = await ServedJournal.MakeAsync(location);
        Measured replayed = await StartsAsync(Target.AtMost(4, "s", $"Started and answered by replay, {engine}"), journal, withSnapshot: false);
        using (RunningServer server = RunningServer.Over(location))
        {
            using var caller = new Caller(server.Address, journal.Cookies);
            await caller.GetAsync(Boat(journal, 7));
            await journal.SnapshotAsync();
        }

        await journal.AppendAsync(_pushed, Tail);
        _pushed += Tail;
        Measured opened = await StartsAsync(Target.AtMost(1.5, "s", $"The same from snapshot and tail, {engine}"), journal, withSnapshot: true);
        using RunningServer running = RunningServer.Over(location);
        using var phone = new Caller(running.Address, journal.Cookies);
        return
        [
            replayed,
            opened,
            await PullAsync(engine, phone, journal),
            await ReadAsync(engine, running, journal, folder),
            .. await PushAsync(engine, phone, journal),
        ];
    }

    /// <summary>From the start of the command to one boat's check.</summary>
    private static async Task<Measured> StartsAsync(Target target, ServedJournal journal, bool withSnapshot)
    {
        var whole = new List<double>();
        var opening = new List<double>();
        var listing = new List<double>();
        var processor = new List<double>();
        double megabytes = 0;
        string load = Machine.Load();
        for (int i = 0; i < Starts; i++)
        {
            if (!withSnapshot)
            {
                await journal.DropSnapshotAsync();
            }

            long start = Stopwatch.GetTimestamp();
            using RunningServer server = RunningServer.Over(journal.Location);
            using var caller = new Caller(server.Address, journal.Cookies);
            double before = server.ProcessorSeconds;
            long asked = Stopwatch.GetTimestamp();
            await caller.GetAsync(Boat(journal, 7));
            processor.Add(server.ProcessorSeconds - before);
            whole.Add(Stopwatch.GetElapsedTime(start).TotalSeconds);
            opening.Add(Stopwatch.GetElapsedTime(asked).TotalSeconds);
            asked = Stopwatch.GetTimestamp();
            await caller.GetAsync($"/api/clubs/{journal.Club}/boats");
            listing.Add(Stopwatch.GetElapsedTime(asked).TotalSeconds);
            megabytes = server.Megabytes;
        }

        return new(target, Middle(whole), string.Create(
            CultureInfo.InvariantCulture,
            $"median of {Starts}; of it {Middle(opening):G3} s from asking after a boat to its check ({Middle(processor):G3} s of processor time); then {Middle(listing):G3} s for the list of boats; {megabytes:0} MB; {load}"));
    }

    private static async Task<Measured> PullAsync(string engine, Caller phone, ServedJournal journal)
    {
        var seconds = new List<double>();
        long bytes = 0;
        string load = Machine.Load();
        for (int run = 0; run <= Starts; run++)
        {
            bytes = 0;
            long start = Stopwatch.GetTimestamp();
            for (int after = 0; after < Pulled; after += PullPage)
            {
                bytes += (await phone.GetAsync(string.Create(
                    CultureInfo.InvariantCulture, $"/api/clubs/{journal.Club}/entries?after={after}&most={PullPage}"))).Length;
            }

            seconds.Add(Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        return new(Target.AtMost(1, "s", $"10,000 entries pulled over HTTP, {engine}"), Middle(seconds[1..]), string.Create(
            CultureInfo.InvariantCulture, $"median of {Starts}; pages of {PullPage}; {bytes / 1e6:0.0} MB unpacked; {load}"));
    }

    private async Task<Measured> ReadAsync(string engine, RunningServer server, ServedJournal journal, string folder)
    {
        string results = Path.Combine(folder, "results");
        string asked = Path.Combine(folder, "asked");
        string[] paths =
        [
            .. Enumerable.Range(0, 60).SelectMany(boat => new[]
            {
                $"/api/clubs/{journal.Club}/boats",
                Boat(journal, boat),
                string.Create(CultureInfo.InvariantCulture, $"/api/clubs/{journal.Club}/entries?after={_pushed}"),
            }),
        ];
        await File.WriteAllTextAsync(asked, JsonSerializer.Serialize(
            new ReadRun(server.Address, journal.Cookies, journal.Club, paths, ASecond, Seconds, results)));
        string load = Machine.Load();
        double before = server.ProcessorSeconds;
        WholeRuns.Alone.Start<SteadyReads>(asked);
        double processor = server.ProcessorSeconds - before;
        ReadTimes times = JsonSerializer.Deserialize<ReadTimes>(await File.ReadAllTextAsync(results))!;
        return new(Target.AtMost(50, "ms", $"99 of 100 reads answered within, {engine}"), times.P99, string.Create(
            CultureInfo.InvariantCulture,
            $"{ASecond} a second for {Seconds} s: list, one boat's check, pull of nothing new; half within {times.Middle:G3} ms, the slowest of {times.Count} {times.Longest:G3} ms; {processor:G3} s of processor time with what went before; {server.Megabytes:0} MB; {load}"));
    }

    private async Task<IReadOnlyList<Measured>> PushAsync(string engine, Caller phone, ServedJournal journal)
    {
        string load = Machine.Load();
        double single = await PushAsync(phone, journal, Alone, 1);
        double batches = await PushAsync(phone, journal, Batches, Batch);
        string note = $"acknowledged over HTTP, one request after the other; {load}";
        return
        [
            new(Target.AtLeast(50, "entries a second", $"Pushed one at a time, {engine}"), single, $"{Alone}; {note}"),
            new(Target.AtLeast(1000, "entries a second", $"Pushed {Batch} at a time, {engine}"), batches, $"{Batches} batches; {note}"),
        ];
    }

    private async Task<double> PushAsync(Caller phone, ServedJournal journal, int requests, int each)
    {
        byte[][] bodies = [.. journal.Of(_pushed, requests * each).Chunk(each).Select(Lines)];
        _pushed += requests * each;
        await phone.PushAsync(journal.Club, bodies[0]);
        int taken = 0;
        long start = Stopwatch.GetTimestamp();
        foreach (byte[] body in bodies.Skip(1))
        {
            taken += await phone.PushAsync(journal.Club, body);
        }

        double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        return taken == (requests - 1) * each
            ? taken / seconds
            : throw new InvalidOperationException($"{taken} of {(requests - 1) * each} entries were taken.");
    }

    private static byte[] Lines(Entry[] entries) => [.. entries.SelectMany(e => (byte[])[.. EntryJson.ToLine(e), (byte)'\n'])];

    private static string Boat(ServedJournal journal, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"/api/clubs/{journal.Club}/check?boat=boat-{number}");

    private static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
