using Gatewright.Core.Numerics;

namespace Gatewright.Core.Measuring;

/// <summary>The readings of one gate at one point of the stroke, pooled into one.</summary>
internal static class RepeatedReading
{
    /// <summary>Two-sided 95 % of the normal distribution: two readings of one place further apart than this many u are queried.</summary>
    public const double Apart = 1.959964;

    /// <summary>How far any two of so many readings of one place may lie apart.</summary>
    /// <param name="u">The standard uncertainty of the difference of the two that are furthest apart for theirs.</param>
    /// <param name="count">How many readings there are; 2 or more.</param>
    /// <remarks>
    /// Of many readings some two usually differ by more than one pair does: 95 % of their ranges are narrower than this. Where each
    /// has a u of its own it is the Tukey-Kramer limit, exact for equal ones and else a little wide (A. J. Hayter, A proof of the
    /// conjecture that the Tukey-Kramer multiple comparisons procedure is conservative, Annals of Statistics 12, 1984; from memory).
    /// The u is known from the gauge and the way it was read, not from the scatter of these few: Student's t has no part in it.
    /// </remarks>
    public static double ApartLimit(double u, int count) =>
        count == 2 ? Apart * u : NormalRange.Within95(count) * u / Math.Sqrt(2);

    /// <summary>Whether two of so many readings lie further apart than that.</summary>
    /// <remarks>The limit grows with the count: what two may show needs no integral.</remarks>
    public static bool IsApart(double apart, double u, int count) =>
        count > 1 && apart > Apart * u && apart > ApartLimit(u, count);

    /// <summary>The probability that the readings of one place differ less than these do; 1 where nothing about them is uncertain.</summary>
    public static double ProbabilityCloser(double apart, double u, int count) =>
        u > 0 ? NormalRange.Cdf(Math.Sqrt(2) * apart / u, count) : 1;

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
    /// The difference of the two repeats that disagree most, where it is more than their uncertainty and their number allow; null
    /// where all agree.
    /// </summary>
    public static Estimate? Disagreement(ReadOnlySpan<CorrectedReading> repeats, double[] sharedVariances)
    {
        (double Apart, double U, double Ratio) worst = default;
        for (int i = 0; i < repeats.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double apart = Math.Abs(repeats[i].Degrees - repeats[j].Degrees);
                double u = Math.Sqrt(repeats[i].VarianceOfDifference(repeats[j], sharedVariances));
                double ratio = apart == 0 ? 0 : u > 0 ? apart / u : double.PositiveInfinity;
                if (ratio > worst.Ratio)
                {
                    worst = (apart, u, ratio);
                }
            }
        }

        return IsApart(worst.Apart, worst.U, repeats.Length) ? Estimate.FromDegrees(worst.Apart, worst.U) : null;
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
