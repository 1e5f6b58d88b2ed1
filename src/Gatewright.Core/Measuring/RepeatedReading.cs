using Gatewright.Core.Numerics;

namespace Gatewright.Core.Measuring;

/// <summary>The readings of one gate at one point of the stroke, pooled into one.</summary>
internal static class RepeatedReading
{
    /// <summary>Two-sided 95 % of the normal distribution: repeats further apart than this many u are queried.</summary>
    public const double Apart = 1.959964;

    /// <summary>The weights of the repeats in their pooled value; they sum to 1.</summary>
    /// <remarks>
    /// Those that make the pooled variance least, everything the repeats share counted in: w ∝ Σ⁻¹ 1, generalised least
    /// squares for a single value. Within one lying and with one gauge that is the plain mean. Weights by each one's own
    /// variance would not do: three readings by eye, which share one error, would then spoil a fourth that was read level.
    /// </remarks>
    public static double[] Weights(ReadOnlySpan<CorrectedReading> repeats, double[] sharedVariances)
    {
        int count = repeats.Length;
        double[] weights = new double[count];
        Array.Fill(weights, 1);
        if (count > 1)
        {
            double[] covariances = LowerTriangle(repeats, sharedVariances);
            if (Cholesky.Factor(covariances, count))
            {
                Cholesky.SolveLower(covariances, count, weights);
                Cholesky.SolveUpper(covariances, count, weights);
            }
        }

        double total = weights.Sum();
        for (int i = 0; i < count; i++)
        {
            weights[i] /= total;
        }

        return weights;
    }

    /// <summary>
    /// The difference of the two repeats that disagree most, among those that differ by more than their uncertainty
    /// allows; null where all agree.
    /// </summary>
    public static Estimate? Disagreement(ReadOnlySpan<CorrectedReading> repeats, double[] sharedVariances)
    {
        Estimate? worst = null;
        double most = Apart;
        for (int i = 0; i < repeats.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double apart = Math.Abs(repeats[i].PitchDegrees - repeats[j].PitchDegrees);
                double u = Math.Sqrt(repeats[i].VarianceOfDifference(repeats[j], sharedVariances));
                if (apart > most * u)
                {
                    worst = Estimate.FromDegrees(apart, u);
                    most = u > 0 ? apart / u : double.PositiveInfinity;
                }
            }
        }

        return worst;
    }

    private static double[] LowerTriangle(ReadOnlySpan<CorrectedReading> repeats, double[] sharedVariances)
    {
        int count = repeats.Length;
        double[] covariances = new double[count * count];
        double largest = 0;
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                covariances[(i * count) + j] = repeats[i].Covariance(repeats[j], sharedVariances);
            }

            covariances[(i * count) + i] += repeats[i].Noise.Variance;
            largest = Math.Max(largest, covariances[(i * count) + i]);
        }

        // A trace of noise for readings said to have none: repeats that are one and the same then weigh alike.
        for (int i = 0; i < count; i++)
        {
            covariances[(i * count) + i] += 1e-9 * largest;
        }

        return covariances;
    }
}
