namespace Gatewright.Core.Diagnosing;

/// <summary>
/// Every story a boat's readings could tell, with its exact posterior probability: nothing wrong, every single cause,
/// and every pair on two different gates, on a gate and boat-wide, or of the two boat-wide causes.
/// </summary>
internal sealed class StoryWeights
{
    private readonly List<StoryParts> _stories;
    private readonly double[] _probabilities;

    public StoryWeights(EvidenceKernel kernel, List<Opening> openings, ReportEvidence reports)
    {
        Kernel = kernel;
        Openings = openings;
        _stories = Enumerate(openings);
        Table = new(kernel, openings, _stories);
        _probabilities = new double[_stories.Count];
        double most = double.NegativeInfinity;
        for (int story = 0; story < _stories.Count; story++)
        {
            _probabilities[story] = LogWeight(story, reports);
            most = Math.Max(most, _probabilities[story]);
        }

        if (!double.IsFinite(most))
        {
            throw new ArgumentException("No story allows what was read and reported: is a chance set to 0?");
        }

        LogTotal = kernel.LogDensity + most + Math.Log(Normalise(most));
    }

    public EvidenceKernel Kernel { get; }

    public List<Opening> Openings { get; }

    public StoryTable Table { get; }

    /// <summary>ln of the sum over stories of prior odds times evidence.</summary>
    public double LogTotal { get; }

    public int Count => _stories.Count;

    public double Probability(int story) => _probabilities[story];

    /// <summary>The story's causes, none to two.</summary>
    public IReadOnlyList<Opening> Parts(int story)
    {
        StoryParts parts = _stories[story];
        var openings = new Opening[parts.Count];
        for (int part = 0; part < openings.Length; part++)
        {
            openings[part] = Openings[parts[part]];
        }

        return openings;
    }

    /// <summary>The boat's state if the story is true.</summary>
    public StoryState State(int story) => new(Kernel, Table, story);

    /// <summary>The probability of each cause, in the order of <see cref="Openings"/>, over all stories that have it.</summary>
    public double[] Marginals()
    {
        double[] marginals = new double[Openings.Count];
        for (int story = 0; story < _stories.Count; story++)
        {
            for (int part = 0; part < _stories[story].Count; part++)
            {
                marginals[_stories[story][part]] += _probabilities[story];
            }
        }

        for (int i = 0; i < marginals.Length; i++)
        {
            marginals[i] = AtMostOne(marginals[i]);
        }

        return marginals;
    }

    /// <summary>The probability of the stories that have any of the causes asked about.</summary>
    public double AnyOf(Func<CausePart, bool> isAsked)
    {
        bool[] asked = [.. Openings.Select(opening => isAsked(opening.Part))];
        double sum = 0;
        for (int story = 0; story < _stories.Count; story++)
        {
            (int first, int second) = _stories[story];
            if ((first >= 0 && asked[first]) || (second >= 0 && asked[second]))
            {
                sum += _probabilities[story];
            }
        }

        return AtMostOne(sum);
    }

    /// <summary>A sum of probabilities that rounding may have carried past certainty.</summary>
    private static double AtMostOne(double sum) => Math.Min(1, sum);

    private static List<StoryParts> Enumerate(List<Opening> openings)
    {
        var stories = new List<StoryParts>((openings.Count * (openings.Count + 1) / 2) + 1) { StoryParts.None };
        for (int first = 0; first < openings.Count; first++)
        {
            stories.Add(new(first, -1));
            for (int second = 0; second < first; second++)
            {
                if (CanBothBe(openings[first].Part, openings[second].Part))
                {
                    stories.Add(new(first, second));
                }
            }
        }

        return stories;
    }

    private static bool CanBothBe(CausePart one, CausePart other) =>
        one.Gate is { } gate ? !other.Touches(gate) && !(one.Other is { } second && other.Touches(second))
        : other.Gate is not null || one.Cause != other.Cause;

    private double LogWeight(int story, ReportEvidence reports)
    {
        double weight = Table.LogGain(story);
        for (int part = 0; part < _stories[story].Count; part++)
        {
            weight += Openings[_stories[story][part]].LogOdds;
        }

        return reports.IsEmpty ? weight : weight + reports.Log(story, Parts(story), Table);
    }

    /// <summary>Turns the logarithms into probabilities; returns their sum before that, the greatest counting 1.</summary>
    private double Normalise(double most)
    {
        double total = 0;
        for (int story = 0; story < _stories.Count; story++)
        {
            _probabilities[story] = Math.Exp(_probabilities[story] - most);
            total += _probabilities[story];
        }

        for (int story = 0; story < _stories.Count; story++)
        {
            _probabilities[story] /= total;
        }

        return total;
    }
}
