using System.Diagnostics;
using System.Globalization;
using Gatewright.Bench.Reporting;

namespace Gatewright.Bench.WholeRuns;

/// <summary>
/// What a person waits for who checks the example boathouse: the command at the root, with the published program behind
/// it, from the key to the last line.
/// </summary>
internal sealed class DemoShed : IBench
{
    private const int Runs = 15;

    /// <summary>"Something needs attention": the shed has boats that do.</summary>
    private const int NeedsAttention = 1;

    public IEnumerable<Measured> Measure()
    {
        // The first call builds the program if need be, and is not counted.
        Check();
        double? before = ChildTime.Seconds();
        double[] seconds = [.. Enumerable.Range(0, Runs).Select(_ => Check()).Order()];
        string note = string.Create(CultureInfo.InvariantCulture, $"median of {Runs}; {seconds[0]:G3} to {seconds[^1]:G3} s{ChildTime.Note(before, Runs)}");
        return [new(Target.AtMost(0.3, "s", "The example shed checked"), seconds[Runs / 2], note)];
    }

    private static double Check()
    {
        string root = RepositoryRoot.Path;
        long start = Stopwatch.GetTimestamp();
        (int status, string said) = Processes.Run(root, Path.Combine(root, "gatewright"), "check", "examples/shed.csv");
        double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        return status == NeedsAttention
            ? seconds
            : throw new InvalidOperationException($"gatewright check ended with status {status}: {said}");
    }
}
