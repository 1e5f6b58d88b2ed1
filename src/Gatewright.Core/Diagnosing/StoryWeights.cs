namespace Gatewright.Core.Diagnosing;

/// <summary>
/// Every story a boat's readings could tell, with its exact posterior probability: nothing wrong, every single cause,
/// and every pair on two different gates, on a gate and boat-wide, or of the two boat-wide causes.
/// </summary>
internal sealed class StoryWeights
{
    private const int MostUnknowns = 64;
    private readonly List<(int First, int Second)> _stories = [];
    private readonly double[] _probabilities;

    public StoryWeights(EvidenceKernel kernel, List<Opening> openings)
    {
        Kernel = kernel;
        Openings = openings;
        Enumerate();
        _probabilities = new double[_stories.Count];
        double most = double.NegativeInfinity;
        for (int i = 0; i < _stories.Count; i++)
        {
            _probabilities[i] = LogWeight(_stories[i]);
            most = Math.Max(most, _probabilities[i]);
        }

        double total = 0;
        for (int i = 0; i < _stories.Count; i++)
        {
            _probabilities[i] = Math.Exp(_probabilities[i] - most);
            total += _probabilities[i];
        }

        LogTotal = kernel.LogDensity + most + Math.Log(total);
        for (int i = 0; i < _stories.Count; i++)
        {
            _probabilities[i] /= total;
        }
    }

    public EvidenceKernel Kernel { get; }

    public List<Opening> Openings { get; }

    /// <summary>ln of the sum over stories of prior odds times evidence.</summary>
    public double LogTotal { get; }

    public int Count => _stories.Count;

    public double Probability(int story) => _probabilities[story];

    /// <summary>The story's causes, none to two.</summary>
    public IEnumerable<Opening> Parts(int story)
    {
        (int first, int second) = _stories[story];
        if (first >= 0)
        {
            yield return Openings[first];
        }

        if (second >= 0)
        {
            yield return Openings[second];
        }
    }

    /// <summary>The boat's state if the story is true.</summary>
    public StoryState State(int story)
    {
        Span<int> unknowns = stackalloc int[MostUnknowns];
        Span<double> variances = stackalloc double[MostUnknowns];
        int count = Gather(_stories[story], unknowns, variances);
        return new(Kernel, unknowns[..count], variances[..count]);
    }

    private void Enumerate()
    {
        _stories.Add((-1, -1));
        for (int first = 0; first < Openings.Count; first++)
        {
            _stories.Add((first, -1));
            for (int second = 0; second < first; second++)
            {
                if (CanBothBe(Openings[first].Part, Openings[second].Part))
                {
                    _stories.Add((first, second));
                }
            }
        }
    }

    private static bool CanBothBe(CausePart one, CausePart other) =>
        one.Gate is { } gate ? !other.Touches(gate) && !(one.Other is { } second && other.Touches(second))
        : other.Gate is not null || one.Cause != other.Cause;

    private double LogWeight((int First, int Second) story)
    {
        Span<int> unknowns = stackalloc int[MostUnknowns];
        Span<double> variances = stackalloc double[MostUnknowns];
        int count = Gather(story, unknowns, variances);
        double weight = Kernel.LogGain(unknowns[..count], variances[..count]);
        weight += story.First >= 0 ? Openings[story.First].LogOdds : 0;
        return weight + (story.Second >= 0 ? Openings[story.Second].LogOdds : 0);
    }

    private int Gather((int First, int Second) story, Span<int> unknowns, Span<double> variances)
    {
        int count = 0;
        foreach (int part in (ReadOnlySpan<int>)[story.First, story.Second])
        {
            if (part < 0)
            {
                continue;
            }

            Opening opening = Openings[part];
            if (count + opening.Unknowns.Length > MostUnknowns)
            {
                throw new InvalidOperationException($"A boat read in more than {(MostUnknowns / 2) - 2} lyings cannot be diagnosed at once.");
            }

            opening.Unknowns.CopyTo(unknowns[count..]);
            opening.Variances.CopyTo(variances[count..]);
            count += opening.Unknowns.Length;
        }

        return count;
    }
}
