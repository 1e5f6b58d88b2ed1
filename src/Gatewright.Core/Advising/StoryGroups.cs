using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Advising;

/// <summary>The stories of a boat, ready to be sorted by what they say of one gate.</summary>
internal sealed class StoryGroups
{
    private readonly StoryWeights _weights;
    private readonly CausePart[][] _parts;
    private readonly StoryState?[] _states;

    public StoryGroups(StoryWeights weights)
    {
        _weights = weights;
        _parts = new CausePart[weights.Count][];
        _states = new StoryState[weights.Count];
        for (int story = 0; story < _parts.Length; story++)
        {
            _parts[story] = [.. weights.Parts(story).Select(o => o.Part)];
        }
    }

    /// <summary>The boat's state if a story is true.</summary>
    public StoryState State(int story) => _states[story] ??= _weights.State(story);

    /// <summary>The stories by what they say of a gate and of what the boat shares.</summary>
    public List<StoryGroup> SeenFrom(GatePlace gate)
    {
        var groups = new List<(CausePart? First, CausePart? Second, List<(int Story, double Probability)> Members)>();
        for (int story = 0; story < _parts.Length; story++)
        {
            CausePart? first = null;
            CausePart? second = null;
            foreach (CausePart part in _parts[story])
            {
                if (part.Cause.IsBoatWide() || part.Touches(gate))
                {
                    (first, second) = first is null ? (part, null) : (first, part);
                }
            }

            // A dozen groups at most, and the parts are the openings' own objects: a search by reference is quickest.
            int at = groups.FindIndex(g => ReferenceEquals(g.First, first) && ReferenceEquals(g.Second, second));
            if (at < 0)
            {
                at = groups.Count;
                groups.Add((first, second, []));
            }

            groups[at].Members.Add((story, _weights.Probability(story)));
        }

        return [.. groups.Select(g => new StoryGroup([.. new[] { g.First, g.Second }.OfType<CausePart>()], g.Members))];
    }
}

/// <summary>Stories that say the same of one gate and of what the boat shares.</summary>
internal sealed class StoryGroup(IReadOnlyList<CausePart> parts, List<(int Story, double Probability)> members)
{
    public IReadOnlyList<CausePart> Parts => parts;

    public double Weight { get; } = members.Sum(m => m.Probability);

    /// <summary>The likeliest of them, with their shares among themselves.</summary>
    public List<(int Story, double Share)> Likeliest(int most)
    {
        // Stories that mirror each other are equally likely but for rounding, which must not choose between them.
        List<(int Story, double Probability)> kept = [.. members
            .OrderByDescending(m => Math.Round(m.Probability / Weight, 9))
            .Take(most)];
        double total = kept.Sum(m => m.Probability);
        return [.. kept.Select(m => (m.Story, m.Probability / total))];
    }
}
