using System.Globalization;
using System.Text;
using Gatewright.Bench.Boats;
using Gatewright.Bench.Reporting;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing.RigSheets;
using Gatewright.Words;

namespace Gatewright.Bench.WholeRuns;

/// <summary>
/// The rig sheets of a large club's 60 boats, 300 gates read at three stations and the spreads or spans of every seat measured,
/// in a process of its own: judged, diagnosed, laid out and written as one PDF.
/// </summary>
internal sealed class RigSheets : IBench, IAlone
{
    private const int Runs = 5;
    private const string Member = "kim";

    private static readonly DateTimeOffset Now = new(2026, 11, 20, 9, 0, 0, TimeSpan.Zero);

    public IEnumerable<Measured> Measure()
    {
        double? before = ChildTime.Seconds();
        List<AloneRun> runs = [.. Enumerable.Range(1, Runs).Select(shed => Alone.Start<RigSheets>(shed.ToString(CultureInfo.InvariantCulture))).OrderBy(run => run.Seconds)];
        string note = string.Create(
            CultureInfo.InvariantCulture,
            $"median of {Runs}; {runs[0].Seconds:G3} to {runs[^1].Seconds:G3} s; {runs[^1].PeakBytes / 1e6:0} MB of memory at its peak{ChildTime.Note(before, Runs)}");
        return [new(Target.AtMost(5, "s", "Rig sheets of 60 boats printed"), runs[Runs / 2].Seconds, note)];
    }

    public void Do(string argument)
    {
        Club club = ClubOf(int.Parse(argument, CultureInfo.InvariantCulture));
        IReadOnlyList<BoatStanding> boats = ShedVerdicts.Of(club).AllAsync().GetAwaiter().GetResult();
        byte[] pdf = RigSheetPrint.Of(club, boats, new("Bench club", new(2026, 11, 25), Wording.English));

        // A figure for fewer boats, for sheets without gates, or for pages that were not written would be worth nothing.
        int gates = boats.Sum(boat => boat.Check?.Verdict.Gates.Count ?? 0);
        int pages = CountOf(pdf, "/Type/Page"u8) - CountOf(pdf, "/Type/Pages"u8);
        if (boats.Count != WornShed.Boats || gates != WornShed.Gates || pages < WornShed.Boats)
        {
            throw new InvalidOperationException($"{boats.Count} boats, {gates} gates, {pages} pages");
        }
    }

    private static Club ClubOf(int shed)
    {
        using var csv = new MemoryStream();
        using (var to = new StreamWriter(csv, new UTF8Encoding(false), leaveOpen: true))
        {
            ReadingsCsv.Write(to, WornShed.Read(shed).Select(boat => boat.Check.Readings));
        }

        csv.Position = 0;
        ReadingsInput readings = ReadingsCsv.Read([new("shed", csv)], MeasuringSettings.Default);
        var club = Club.Empty("bench");
        var stamp = new RecordingStamp(Member, "bench", default, Now, () => Guid.CreateVersion7(Now));
        club = club.With(ReadingsRecording.Entries(readings, club, stamp).Entries.Select(Recorded.Of));
        return club.With(club.Subjects.Where(s => s.Thing == Things.Boat && s.Key.Length > 0).ToList().SelectMany(s => Rig(club, s.Key)));
    }

    /// <summary>What was measured of each seat.</summary>
    private static IEnumerable<Recorded> Rig(Club club, string boat)
    {
        var view = new Journal.Views.BoatView(club, boat);
        string measure = view.Class!.Rowing == Core.Rowing.Scull ? "span" : "spread";
        for (int seat = 1; seat <= view.Class.Seats; seat++)
        {
            (string kind, int version, byte[] body) = FactKinds.Write(new MeasureTaken(boat, measure, seat, measure == "span" ? 159.5m : 84.5m, "cm"));
            yield return Recorded.Of(new()
            {
                Id = Guid.CreateVersion7(Now), Club = club.Name, Member = Member, Device = "bench", Time = new(Now.ToUnixTimeMilliseconds(), seat), Kind = kind, Version = version, Body = body,
            });
        }
    }

    private static int CountOf(ReadOnlySpan<byte> document, ReadOnlySpan<byte> sought)
    {
        int count = 0;
        for (int at = document.IndexOf(sought); at >= 0; at = document.IndexOf(sought))
        {
            count++;
            document = document[(at + sought.Length)..];
        }

        return count;
    }
}
