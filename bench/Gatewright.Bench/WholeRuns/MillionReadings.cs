using System.Globalization;
using Gatewright.Bench.Boats;
using Gatewright.Bench.Reporting;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Bench.WholeRuns;

/// <summary>A million readings of 40,000 eights, read from a file of CSV and judged, in one process.</summary>
internal sealed class MillionReadings : IBench, IAlone
{
    private const int Runs = 3;
    private const int Boats = 1_000_000 / Eights.Readings;

    public IEnumerable<Measured> Measure()
    {
        string path = Path.Combine(Path.GetTempPath(), $"gatewright-bench-{Environment.ProcessId}.csv");
        try
        {
            File.WriteAllLines(path, EightsCsv.Lines(Boats));
            double? before = ChildTime.Seconds();
            List<AloneRun> runs = [.. Enumerable.Range(0, Runs).Select(_ => Alone.Start<MillionReadings>(path))];
            AloneRun middle = runs.OrderBy(run => run.Seconds).ElementAt(Runs / 2);
            string note = string.Create(CultureInfo.InvariantCulture, $"median of {Runs}; a file of {new FileInfo(path).Length / 1e6:0} MB{ChildTime.Note(before, Runs)}");
            return
            [
                new(Target.AtMost(6, "s", "A million readings parsed and judged"), middle.Seconds, note),
                new(Target.AtMost(1.5, "GB", "Memory for that, at its peak"), runs.Max(run => run.PeakBytes) / 1e9, "the most of them"),
            ];
        }
        finally
        {
            File.Delete(path);
        }
    }

    public void Do(string argument)
    {
        using FileStream file = File.OpenRead(argument);
        ReadingsInput input = ReadingsCsv.Read([new(argument, file)], MeasuringSettings.Default);
        int judged = 0;
        int good = 0;
        foreach (BoatReadings boat in input.Boats)
        {
            judged += boat.Readings.Count;
            good += BoatCheck.Of(boat, BoatContext.None, CheckSettings.Default).Verdict.Verdict == Verdict.Good ? 1 : 0;
        }

        // A figure for work that was not done, or that found every boat alike, would be worth nothing.
        if (judged != Boats * Eights.Readings || good == 0 || good == Boats)
        {
            throw new InvalidOperationException($"{judged} readings judged, {good} boats good; {string.Join("; ", input.Errors.Take(3))}");
        }
    }
}
