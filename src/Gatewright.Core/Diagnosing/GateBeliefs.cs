using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>What a gate is believed to be once one takes some cause as given.</summary>
public static class GateBeliefs
{
    /// <summary>
    /// The belief about a gate, averaged over those stories that have a cause: its mean and its whole covariance.
    /// </summary>
    /// <param name="diagnosis">The boat's diagnosis.</param>
    /// <param name="gate">A gate of which something was read.</param>
    /// <param name="given">The cause taken as given.</param>
    /// <exception cref="ArgumentException">No story has that cause.</exception>
    public static GateBelief Given(Diagnosis diagnosis, GatePlace gate, CausePart given)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        StoryWeights weights = diagnosis.Weights;
        List<int> stories = [.. Enumerable.Range(0, weights.Count).Where(i => weights.Parts(i).Any(o => o.Part == given))];
        double total = stories.Sum(weights.Probability);
        if (!(total > 0))
        {
            throw new ArgumentException($"No story has {given}.", nameof(given));
        }

        // Of those stories, the ones that matter among themselves; the rest would only cost time.
        List<int> kept = [.. stories.Where(i => weights.Probability(i) >= 1e-4 * total)];
        return Average(weights, gate, kept, kept.Sum(weights.Probability));
    }

    private static GateBelief Average(StoryWeights weights, GatePlace gate, List<int> stories, double total)
    {
        int first = weights.Kernel.Model.Layout.Gate(gate);
        double[] mean = new double[3];
        double[] second = new double[9];
        foreach (int story in stories)
        {
            StoryState state = weights.State(story);
            double share = weights.Probability(story) / total;
            for (int i = 0; i < 3; i++)
            {
                double own = state.Mean([first + i], [1]);
                mean[i] += share * own;
                for (int j = 0; j <= i; j++)
                {
                    double other = state.Mean([first + j], [1]);
                    second[(3 * i) + j] += share * ((own * other) + state.Covariance([first + i], [1], [first + j], [1]));
                }
            }
        }

        double[] covariance = new double[9];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double value = second[(3 * i) + j] - (mean[i] * mean[j]);
                covariance[(3 * i) + j] = value;
                covariance[(3 * j) + i] = value;
            }
        }

        return new(gate, GateState.FromDegrees(mean[0], mean[1], mean[2]), new(3, covariance));
    }
}
