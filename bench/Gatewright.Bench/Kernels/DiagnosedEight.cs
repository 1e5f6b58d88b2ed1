using BenchmarkDotNet.Attributes;
using Gatewright.Bench.Boats;
using Gatewright.Bench.Reporting;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Bench.Kernels;

/// <summary>
/// The full posterior of eights with 24 readings: 548 stories, every gate's causes and state, and the forecast at every station.
/// </summary>
public class DiagnosedEight : IBench
{
    private const int Boats = 1000;

    private readonly BoatReadings[] _eights =
        [.. Enumerable.Range(1, Boats).Select(i => new BoatReadings("eight", BoatClass.Parse("8+"), [.. Eights.Read(i).Take(24)]))];

    [Benchmark]
    public double One() => Diagnose(_eights[0]);

    [Benchmark]
    public double Thousand() => _eights.Sum(Diagnose);

    public IEnumerable<Measured> Measure()
    {
        IReadOnlyDictionary<string, double> nanoseconds = Kernel.Nanoseconds<DiagnosedEight>();
        return
        [
            new(Target.AtMost(1, "ms", "An eight's 24 readings diagnosed in full"), nanoseconds[nameof(One)] / 1e6),
            new(Target.AtMost(1, "s", "A thousand eights diagnosed in full"), nanoseconds[nameof(Thousand)] / 1e9),
        ];
    }

    private static double Diagnose(BoatReadings eight)
    {
        Diagnosis diagnosis = Diagnosis.Of(eight, BoatContext.None, DiagnosingSettings.Default);
        double sum = 0;
        foreach (GateDiagnosis gate in diagnosis.Gates)
        {
            foreach (Station station in Stations.All)
            {
                OarAngle at = MeasuringSettings.Default.Sweep.At(station);
                GaussianMixture forecast = diagnosis.At(gate.Gate, at);
                sum += forecast.Mean;
            }
        }

        return sum;
    }
}
