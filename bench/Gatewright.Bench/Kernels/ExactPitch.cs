using BenchmarkDotNet.Attributes;
using Gatewright.Bench.Reporting;
using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Bench.Kernels;

/// <summary>The exact geometry, for gates that lean on hulls that do not lie level: nothing is left out.</summary>
public class ExactPitch : IBench
{
    private const int Count = 1000;

    private readonly OarAngle[] _angles = [.. Range(i => OarAngle.FromDegrees(-43 + (i % 105)))];
    private readonly GateState[] _gates = [.. Range(i => GateState.FromDegrees(2 + (i % 5), (i % 7) - 3, (i % 6) - 2.5))];
    private readonly HullAttitude[] _hulls = [.. Range(i => HullAttitude.FromDegrees((i % 9) - 4, (i % 8) - 3.5))];

    [Benchmark(OperationsPerInvoke = Count)]
    public double At()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            Side side = (i & 1) == 0 ? Side.Port : Side.Starboard;
            Lie lie = (i & 2) == 0 ? Lie.Upright : Lie.Inverted;
            sum += PitchGeometry.At(_angles[i], _gates[i], side, _hulls[i], lie).Degrees;
        }

        return sum;
    }

    public IEnumerable<Measured> Measure() =>
        [new(Target.AtLeast(5e6, "a second", "Exact pitches on one core"), 1e9 / Kernel.Nanoseconds<ExactPitch>()[nameof(At)])];

    private static IEnumerable<T> Range<T>(Func<int, T> make) => Enumerable.Range(0, Count).Select(make);
}
