using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Mending;

/// <summary>What a re-check found.</summary>
public enum RecheckOutcome
{
    /// <summary>The gate reads as predicted after the mending.</summary>
    Mended,

    /// <summary>The gate reads as it did before.</summary>
    NotMended,

    /// <summary>The gate has changed, but not as predicted: something else was mended, or moved.</summary>
    Otherwise,
}

/// <summary>A re-check judged against what was predicted.</summary>
/// <param name="Outcome">The most probable of the three.</param>
/// <param name="Mended">The probability that the gate is as predicted.</param>
/// <param name="NotMended">The probability that it is as before.</param>
/// <param name="Otherwise">The probability that it is neither.</param>
public sealed record Recheck(RecheckOutcome Outcome, double Mended, double NotMended, double Otherwise)
{
    /// <summary>Before the readings: most mendings do what they should. Ours, from judgement.</summary>
    private static ReadOnlySpan<double> Prior => [0.8, 0.1, 0.1];

    /// <summary>How far a gate that went neither way may stand from the prediction, each unknown, in degrees.</summary>
    private const double AnywhereU = 2.5;

    /// <summary>Judges a gate's readings after a mending, all of them together with their covariances.</summary>
    /// <param name="before">What the gate was believed to be.</param>
    /// <param name="after">What the mending was to make of it.</param>
    /// <param name="readings">The re-check's readings of that gate, corrected.</param>
    /// <exception cref="ArgumentException">The gate was not read again.</exception>
    public static Recheck Judge(GateBelief before, GateBelief after, CorrectedReadings readings)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(readings);
        List<int> rows = [.. Enumerable.Range(0, readings.Pitches.Count).Where(i => readings.Pitches[i].Gate == after.Gate)];
        if (rows.Count == 0)
        {
            throw new ArgumentException($"{after.Gate} was not read again.", nameof(readings));
        }

        GateState anywhere = GateState.FromDegrees(AnywhereU, AnywhereU, AnywhereU);
        double[] logs =
        [
            Math.Log(Prior[0]) + LogDensity(after, readings, rows),
            Math.Log(Prior[1]) + LogDensity(before, readings, rows),
            Math.Log(Prior[2]) + LogDensity(after.After(default, anywhere), readings, rows),
        ];
        double most = logs.Max();
        double[] weights = [.. logs.Select(l => Math.Exp(l - most))];
        double total = weights.Sum();
        double[] p = [.. weights.Select(w => w / total)];
        var outcome = (RecheckOutcome)Array.IndexOf(p, p.Max());
        return new(outcome, p[0], p[1], p[2]);
    }

    private static double LogDensity(GateBelief belief, CorrectedReadings readings, List<int> rows)
    {
        int size = rows.Count;
        double[] deviation = new double[size];
        double[] covariance = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            CorrectedPitch pitch = readings.Pitches[rows[i]];
            deviation[i] = pitch.Pitch.Degrees - belief.PitchAt(pitch.At.Angle).Degrees;
            for (int j = 0; j <= i; j++)
            {
                double value = readings.Covariance(rows[i], rows[j])
                    + belief.Covariance.Covariance(Slopes(pitch), Slopes(readings.Pitches[rows[j]]));
                covariance[(i * size) + j] = value;
                covariance[(j * size) + i] = value;
            }
        }

        return GaussianDensity.Log(deviation, new(size, covariance));
    }

    private static double[] Slopes(CorrectedPitch pitch)
    {
        PitchSlopes slopes = PitchSlopes.At(pitch.At.Angle, pitch.Gate.Side, Lie.Upright);
        return [1, slopes.Aft, slopes.Out];
    }
}
