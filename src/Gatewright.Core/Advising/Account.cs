using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Advising;

/// <summary>
/// One account of a gate: what is wrong with it and with what the boat shares, whatever may be wrong elsewhere.
/// </summary>
/// <param name="Parts">What is wrong; empty when nothing is.</param>
/// <param name="Weight">The probability of all stories that give this account.</param>
/// <param name="Means">What the gate's unknowns and the shared ones then are, in the order of the view.</param>
/// <param name="Covariances">Theirs, row by row, in square degrees.</param>
internal sealed record Account(IReadOnlyList<CausePart> Parts, double Weight, double[] Means, double[] Covariances)
{
    /// <summary>The mean of a sum of the unknowns, each times its weight.</summary>
    public double Mean(ReadOnlySpan<double> sum)
    {
        double mean = 0;
        for (int i = 0; i < sum.Length; i++)
        {
            mean += sum[i] * Means[i];
        }

        return mean;
    }

    /// <summary>The covariance of two such sums.</summary>
    public double Covariance(ReadOnlySpan<double> sum, ReadOnlySpan<double> other)
    {
        double covariance = 0;
        for (int i = 0; i < sum.Length; i++)
        {
            if (sum[i] == 0)
            {
                continue;
            }

            for (int j = 0; j < other.Length; j++)
            {
                covariance += sum[i] * other[j] * Covariances[(i * Means.Length) + j];
            }
        }

        return covariance;
    }
}
