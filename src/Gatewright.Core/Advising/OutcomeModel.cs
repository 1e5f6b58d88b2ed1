using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Advising;

/// <summary>
/// How the outcome of a reading is distributed under each of the likeliest stories: normal, of one or two dimensions.
/// </summary>
internal sealed class OutcomeModel
{
    private readonly double[] _logNorms;

    public OutcomeModel(Observation observation, IReadOnlyList<StoryState> states, double[] weights)
    {
        Dimensions = observation.Dimensions;
        Weights = weights;
        int stories = states.Count;
        Means = new double[stories, 2];
        Factors = new double[stories, 3];
        _logNorms = new double[stories];
        for (int k = 0; k < stories; k++)
        {
            Fill(k, observation, states[k]);
        }
    }

    public int Dimensions { get; }

    public double[] Weights { get; }

    /// <summary>The mean outcome under each story.</summary>
    public double[,] Means { get; }

    /// <summary>The Cholesky factor of the outcome's covariance under each story: l₁₁, l₂₁, l₂₂.</summary>
    public double[,] Factors { get; }

    /// <summary>The probabilities of the stories once the outcome is y, into <paramref name="posterior"/>.</summary>
    /// <returns>The density of that outcome.</returns>
    public double Posterior(double first, double second, Span<double> posterior)
    {
        double total = 0;
        for (int k = 0; k < Weights.Length; k++)
        {
            (double one, double two) = Standardised(k, first, second);
            posterior[k] = Weights[k] * Math.Exp(_logNorms[k] - (0.5 * ((one * one) + (two * two))));
            total += posterior[k];
        }

        for (int k = 0; k < Weights.Length; k++)
        {
            posterior[k] /= total;
        }

        return total;
    }

    /// <summary>L⁻¹ (y − m) under one story; its second part is 0 in one dimension.</summary>
    public (double One, double Two) Standardised(int story, double first, double second)
    {
        double one = (first - Means[story, 0]) / Factors[story, 0];
        return Dimensions == 1
            ? (one, 0)
            : (one, (second - Means[story, 1] - (Factors[story, 1] * one)) / Factors[story, 2]);
    }

    private void Fill(int k, Observation observation, StoryState state)
    {
        (int[] at, double[] w) = observation.Sums[0];
        Means[k, 0] = state.Mean(at, w);
        Factors[k, 0] = Math.Sqrt(state.Covariance(at, w, at, w) + observation.Noise);
        _logNorms[k] = -Math.Log(Factors[k, 0]);
        if (Dimensions == 1)
        {
            return;
        }

        (int[] at2, double[] w2) = observation.Sums[1];
        Means[k, 1] = state.Mean(at2, w2);
        Factors[k, 1] = state.Covariance(at, w, at2, w2) / Factors[k, 0];
        Factors[k, 2] = Math.Sqrt(
            state.Covariance(at2, w2, at2, w2) + observation.Noise - (Factors[k, 1] * Factors[k, 1]));
        _logNorms[k] -= Math.Log(Factors[k, 2]);
    }
}
