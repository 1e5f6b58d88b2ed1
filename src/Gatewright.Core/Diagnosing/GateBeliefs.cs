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
        return Over(diagnosis, gate, kept);
    }

    /// <summary>The belief about a gate, averaged over some of the boat's stories, each by its probability.</summary>
    internal static GateBelief Over(Diagnosis diagnosis, GatePlace gate, IReadOnlyList<int> stories)
    {
        StoryWeights weights = diagnosis.Weights;
        int first = weights.Kernel.Model.Layout.Gate(gate);
        return Average([.. stories.Select(s => (weights.Probability(s), Of(weights.State(s), gate, first)))]);
    }

    /// <summary>One belief in place of several: the mean over all, and what varies within them and between them.</summary>
    internal static GateBelief Average(IReadOnlyList<(double Weight, GateBelief Belief)> beliefs)
    {
        double total = beliefs.Sum(b => b.Weight);
        double[] mean = new double[3];
        foreach ((double weight, GateBelief belief) in beliefs)
        {
            for (int i = 0; i < 3; i++)
            {
                mean[i] += weight / total * Unknown(belief.Mean, i);
            }
        }

        double[] covariance = new double[9];
        foreach ((double weight, GateBelief belief) in beliefs)
        {
            for (int i = 0; i < 9; i++)
            {
                (int row, int column) = (i / 3, i % 3);
                double between = (Unknown(belief.Mean, row) - mean[row]) * (Unknown(belief.Mean, column) - mean[column]);
                covariance[i] += weight / total * (belief.Covariance[row, column] + between);
            }
        }

        return new(beliefs[0].Belief.Gate, GateState.FromDegrees(mean[0], mean[1], mean[2]), new(3, covariance));
    }

    private static GateBelief Of(StoryState state, GatePlace gate, int first)
    {
        double[] covariance = new double[9];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double value = state.Covariance([first + i], [1], [first + j], [1]);
                covariance[(3 * i) + j] = value;
                covariance[(3 * j) + i] = value;
            }
        }

        GateState mean = GateState.FromDegrees(
            state.Mean([first], [1]), state.Mean([first + 1], [1]), state.Mean([first + 2], [1]));
        return new(gate, mean, new(3, covariance));
    }

    private static double Unknown(GateState state, int unknown) => unknown switch
    {
        0 => state.GatePitch.Degrees,
        1 => state.Pin.Aft.Degrees,
        _ => state.Pin.Out.Degrees,
    };
}
