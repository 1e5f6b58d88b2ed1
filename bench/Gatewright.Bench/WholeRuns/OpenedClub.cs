using System.Globalization;
using Gatewright.Bench.Clubs;
using Gatewright.Bench.Reporting;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Journal.Views;

namespace Gatewright.Bench.WholeRuns;

/// <summary>
/// A club of 200,000 entries opened in a process of its own, each run from the start of the process to one boat's record:
/// from a snapshot of all but the last 1,000, and by replay of the whole journal line by line.
/// </summary>
internal sealed class OpenedClub : IBench
{
    public const int Entries = 200_000;

    private const int Tail = 1_000;

    private const int Runs = 5;

    public IEnumerable<Measured> Measure()
    {
        string folder = Directory.CreateTempSubdirectory("gatewright-bench-").FullName;
        try
        {
            Entry[] entries = [.. LongJournal.Entries(Entries)];
            WriteLines(Path.Combine(folder, "journal"), entries);
            WriteLines(Path.Combine(folder, "tail"), entries[^Tail..]);
            using (FileStream snapshot = File.Create(Path.Combine(folder, "snapshot")))
            {
                Club club = Club.Empty(LongJournal.Club).With(entries[..^Tail].Select(Recorded.Of));
                ClubSnapshot.Write(club, Entries - Tail, snapshot);
            }

            return
            [
                Measure<FromSnapshot>(Target.AtMost(1.5, "s", "Open 200,000 entries from snapshot and tail"), folder, "snapshot"),
                Measure<ByReplay>(Target.AtMost(4, "s", "Open 200,000 entries by replay"), folder, "journal"),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Measured Measure<T>(Target target, string folder, string file)
        where T : IAlone
    {
        double? before = ChildTime.Seconds();
        List<AloneRun> runs = [.. Enumerable.Range(0, Runs).Select(_ => Alone.Start<T>(folder)).OrderBy(run => run.Seconds)];
        double megabytes = new FileInfo(Path.Combine(folder, file)).Length / 1e6;
        string note = string.Create(
            CultureInfo.InvariantCulture,
            $"{runs[Runs / 2].Seconds / target.Limit:G3} of the target; median of {Runs}, {runs[0].Seconds:G3} to {runs[^1].Seconds:G3} s; {megabytes:0} MB; {runs[^1].PeakBytes / 1e6:0} MB of memory{ChildTime.Note(before, Runs)}");
        return new(target, runs[Runs / 2].Seconds, note);
    }

    private static void WriteLines(string path, IEnumerable<Entry> entries)
    {
        using FileStream file = File.Create(path);
        foreach (Entry entry in entries)
        {
            file.Write(EntryJson.ToLine(entry));
            file.WriteByte((byte)'\n');
        }
    }

    private static IEnumerable<Recorded> ReadLines(string path) => File.ReadLines(path)
        .Select(line => EntryJson.Read(System.Text.Encoding.UTF8.GetBytes(line), out _) ?? throw new InvalidOperationException(line))
        .Select(Recorded.Of);

    /// <summary>A figure for a club that lacks something, or that nothing can be asked of, would be worth nothing.</summary>
    private static void Look(Club club)
    {
        int boat = new BoatView(club, "boat-7").Records.Count;
        if (club.Count != Entries || boat < Entries / 100)
        {
            throw new InvalidOperationException($"{club.Count} entries, {boat} of one boat");
        }
    }

    private sealed class FromSnapshot : IAlone
    {
        public void Do(string argument)
        {
            using FileStream snapshot = File.OpenRead(Path.Combine(argument, "snapshot"));
            (Club club, _) = ClubSnapshot.Read(snapshot);
            Look(club.With(ReadLines(Path.Combine(argument, "tail"))));
        }
    }

    private sealed class ByReplay : IAlone
    {
        public void Do(string argument) =>
            Look(Club.Empty(LongJournal.Club).With(ReadLines(Path.Combine(argument, "journal"))));
    }
}
