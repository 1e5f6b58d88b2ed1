using BenchmarkDotNet.Attributes;
using Gatewright.Bench.Reporting;
using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Bench.Kernels;

/// <summary>What to read next on an eight in doubt: one gate high, and all of them high on a boat levelled by eye.</summary>
public class AdvisedEight : IBench
{
    private readonly BoatCheck _oneHigh = Abeam(new HullLevel.Read(HullAttitude.Level), 4, 4, 3.5, 4, 2.5, 4, 4.5, 4);
    private readonly BoatCheck _allHigh = Abeam(new HullLevel.ByEye(), 5.5, 5.5, 5.5, 5, 5.5, 6, 5.5, 5.5);

    [Benchmark]
    public Advice OneHigh() => Advisor.For(_oneHigh, AdvisingSettings.Default);

    [Benchmark]
    public Advice AllHigh() => Advisor.For(_allHigh, AdvisingSettings.Default);

    public IEnumerable<Measured> Measure()
    {
        IReadOnlyDictionary<string, double> nanoseconds = Kernel.Nanoseconds<AdvisedEight>();
        return
        [
            new(Target.AtMost(5, "ms", "An eight with a gate in doubt advised on"), nanoseconds[nameof(OneHigh)] / 1e6),
            new(Target.AtMost(5, "ms", "An eight all high, levelled by eye, advised on"), nanoseconds[nameof(AllHigh)] / 1e6),
        ];
    }

    private static BoatCheck Abeam(HullLevel level, params double[] shown)
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        var lie = new BoatLie(Lie.Upright, level);
        Gauge gauge = settings.GaugeNamed("gauge");
        IEnumerable<Reading> readings = shown.Select((degrees, i) => new Reading(
            ReadItem.Gate,
            new(i + 1, i % 2 == 0 ? Side.Starboard : Side.Port),
            settings.Sweep.Point(Station.Abeam),
            Angle.FromDegrees(degrees),
            lie,
            gauge));
        return BoatCheck.Of(new("eight", BoatClass.Parse("8+"), [.. readings]), BoatContext.None, CheckSettings.Default);
    }
}
