using BenchmarkDotNet.Attributes;
using Gatewright.Bench.Boats;
using Gatewright.Bench.Reporting;
using Gatewright.Core.Measuring;

namespace Gatewright.Bench.Kernels;

/// <summary>An eight with 24 readings, corrected with its covariances.</summary>
public class CorrectedEight : IBench
{
    private readonly Reading[] _readings = [.. Eights.Read(1).Take(24)];

    [Benchmark]
    public int Of() => CorrectedReadings.Of(_readings, MeasuringSettings.Default).Pitches.Count;

    /// <summary>A million readings in 6 s leave 150 µs for a boat; a third of it for correcting is ample.</summary>
    public IEnumerable<Measured> Measure() =>
        [new(Target.AtMost(50, "µs", "An eight's 24 readings corrected"), Kernel.Nanoseconds<CorrectedEight>()[nameof(Of)] / 1000)];
}
