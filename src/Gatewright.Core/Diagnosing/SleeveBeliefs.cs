namespace Gatewright.Core.Diagnosing;

/// <summary>What an oar's sleeve error is believed to be once one takes some cause as given.</summary>
public static class SleeveBeliefs
{
    /// <summary>Its mean in degrees, averaged over those stories that have the cause.</summary>
    /// <exception cref="ArgumentException">Nothing was read or told of that oar.</exception>
    public static double MeanDegrees(Diagnosis diagnosis, GatePlace oar, CausePart given)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        StoryWeights weights = diagnosis.Weights;
        if (weights.Kernel.Model.Layout.Sleeve(oar) is not { } unknown)
        {
            throw new ArgumentException($"Nothing was read or told of the oar of {oar}.", nameof(oar));
        }

        double sum = 0;
        double total = 0;
        for (int story = 0; story < weights.Count; story++)
        {
            if (weights.Parts(story).Any(o => o.Part == given))
            {
                double probability = weights.Probability(story);
                sum += probability * weights.State(story).Mean([unknown], [1]);
                total += probability;
            }
        }

        return sum / total;
    }
}
