using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Advising;

/// <summary>
/// A station of a gate whose verdict a reading may settle: below the floor, outside the limits, or inside.
/// </summary>
/// <param name="Gate">The gate.</param>
/// <param name="At">The unknowns whose sum the pitch is.</param>
/// <param name="Weights">Their weights.</param>
/// <param name="Limits">What the standard asks there.</param>
internal sealed record VerdictStation(GatePlace Gate, int[] At, double[] Weights, StationLimits Limits)
{
    public const int Classes = 3;

    public static VerdictStation Of(GatePlace gate, int firstUnknown, OarAngle at, StationLimits limits)
    {
        PitchSlopes slopes = PitchSlopes.At(at, gate.Side, Lie.Upright);
        return new(gate, [firstUnknown, firstUnknown + 1, firstUnknown + 2], [1, slopes.Aft, slopes.Out], limits);
    }

    /// <summary>Adds the three classes' probabilities for a normal pitch, times a weight.</summary>
    public void Add(double weight, double mean, double deviation, Span<double> classes)
    {
        double below = NormalTable.Cdf((Limits.Floor.Degrees - mean) / deviation);
        double low = NormalTable.Cdf((Limits.Lowest.Degrees - mean) / deviation);
        double high = NormalTable.Cdf((mean - Limits.Highest.Degrees) / deviation);
        classes[0] += weight * below;
        classes[1] += weight * (low - below + high);
        classes[2] += weight * (1 - low - high);
    }
}
