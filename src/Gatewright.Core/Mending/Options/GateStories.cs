using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Mending.Options;

/// <summary>
/// All that a gate may be, over every story of its boat: kept apart by what the story says of this gate, so that the
/// tail which a floor of safety asks about is not averaged away, and a mending can do in each story what it does there.
/// </summary>
internal sealed class GateStories
{
    /// <summary>Stories of the boat less likely than this are left out.</summary>
    private const double Negligible = 1e-6;

    /// <summary>Accounts of the gate less likely than this are left out: floors are judged at 0.95 and 0.5.</summary>
    private const double NegligibleOfAGate = 1e-4;

    private readonly IReadOnlyList<GateStory> _stories;

    private GateStories(IReadOnlyList<GateStory> stories) => _stories = stories;

    public static GateStories Of(Diagnosis diagnosis, GatePlace gate)
    {
        StoryWeights weights = diagnosis.Weights;
        var groups = Enumerable.Range(0, weights.Count)
            .Where(i => weights.Probability(i) >= Negligible)
            .GroupBy(i => About(weights, i, gate))
            .Select(g => (g.Key.Own, Probability: g.Sum(weights.Probability), Stories: g.ToList()))
            .Where(g => g.Probability >= NegligibleOfAGate)
            .ToList();
        double total = groups.Sum(g => g.Probability);
        return new([.. groups.Select(g =>
            new GateStory(g.Own?.Cause, g.Probability / total, GateBeliefs.Over(diagnosis, gate, g.Stories)))]);
    }

    /// <summary>What the gate is to become when something is done to it, whichever story is true.</summary>
    public GateStories After(MendingStep step) =>
        new([.. _stories.Select(s => s with { Belief = step.Apply(s.Belief, s.Cause) })]);

    /// <summary>The pitch at an oar angle on a level boat: exact within each story, and all stories side by side.</summary>
    public GaussianMixture PitchAt(OarAngle at) => new(
        [.. _stories.Select(s => s.Probability)],
        [.. _stories.Select(s => s.Belief.PitchAt(at).Degrees)],
        [.. _stories.Select(s => Math.Sqrt(s.Belief.PitchVariance(at)))]);

    /// <summary>The belief averaged over all stories: its mean and its whole covariance.</summary>
    public GateBelief Average() => GateBeliefs.Average([.. _stories.Select(s => (s.Probability, s.Belief))]);

    /// <summary>What a story says of this gate, and of what the whole boat shares; the rest hardly touches it.</summary>
    private static (CausePart? Own, CausePart? Shared) About(StoryWeights weights, int story, GatePlace gate)
    {
        List<CausePart> parts = [.. weights.Parts(story).Select(o => o.Part)];
        return (parts.Find(p => p.Touches(gate)), parts.Find(p => p.Cause.IsBoatWide()));
    }
}
