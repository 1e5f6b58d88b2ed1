namespace Gatewright.Core.Diagnosing;

/// <summary>
/// Every story a boat's readings could tell, with its exact posterior probability: nothing wrong, every single cause,
/// and every pair on two different gates, on a gate and boat-wide, or of the two boat-wide causes.
/// </summary>
internal sealed class StoryWeights
{
    private readonly List<(int First, int Second)> _stories = [];
    private readonly double[] _probabilities;
    private readonly ReportEvidence _reports;

    public StoryWeights(EvidenceKernel kernel, List<Opening> openings, ReportEvidence reports)
    {
        _reports = reports;
        Kernel = kernel;
        Openings = openings;
        Enumerate();
        _probabilities = new double[_stories.Count];
        var buffer = OpenedBuffer.For(openings);
        double most = double.NegativeInfinity;
        for (int i = 0; i < _stories.Count; i++)
        {
            _probabilities[i] = LogWeight(i, buffer);
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
        (int first, int second) = _stories[story];
        return new(Kernel, OpenedBuffer.For(Openings).Gather(
            first >= 0 ? Openings[first] : null, second >= 0 ? Openings[second] : null));
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

    private double LogWeight(int story, OpenedBuffer buffer)
    {
        (int first, int second) = _stories[story];
        double odds = (first >= 0 ? Openings[first].LogOdds : 0) + (second >= 0 ? Openings[second].LogOdds : 0);
        double evidence = Kernel.LogGain(buffer.Gather(
            first >= 0 ? Openings[first] : null, second >= 0 ? Openings[second] : null));
        return _reports.IsEmpty
            ? odds + evidence
            : odds + evidence + _reports.Log([.. Parts(story).Select(o => o.Part)], () => State(story));
    }
}
