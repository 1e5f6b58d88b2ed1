using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// The exact posterior over what is wrong with a boat, and what follows from it: probabilities of causes, what each
/// gate probably is, and what to expect where it was not read.
/// </summary>
public sealed class Diagnosis : IPitchForecast
{
    /// <summary>
    /// Stories less likely than this are left out of averages: together they weigh under 0.00001, which no printed
    /// figure shows.
    /// </summary>
    private const double Negligible = 1e-8;

    private readonly StoryWeights _weights;
    private readonly double[] _kept;
    private readonly StoryState[] _states;

    private Diagnosis(StoryWeights weights)
    {
        _weights = weights;
        List<int> kept = [.. Enumerable.Range(0, weights.Count).Where(i => weights.Probability(i) >= Negligible)];
        _kept = [.. kept.Select(weights.Probability)];
        _states = [.. kept.Select(weights.State)];
    }

    /// <summary>Every story at least as likely as one in ten thousand, most likely first.</summary>
    public IReadOnlyList<Story> Stories => field ??= TellStories();

    /// <summary>How many stories were weighed.</summary>
    public int StoryCount => _weights.Count;

    /// <summary>Every gate of which something was read, from the bow.</summary>
    public IReadOnlyList<GateDiagnosis> Gates => field ??= [.. Layout.Gates.Select(Gate)];

    /// <summary>Every lying of the boat.</summary>
    public IReadOnlyList<LevelDiagnosis> Levels => field ??= [.. Layout.Shared.Lies.Select((lie, i) =>
        new LevelDiagnosis(lie, Unknown(Layout.Lie(i)), Unknown(Layout.Lie(i) + 1)))];

    /// <summary>Likely causes that these readings cannot tell apart, most alike first.</summary>
    public IReadOnlyList<Twins> Twins => field ??=
        TwinSearch.Of(_weights.Kernel, _weights.Openings, part => Probability(p => p == part));

    /// <summary>ln p(readings), summed over all stories weighed by their prior odds; for comparing models.</summary>
    public double LogEvidence => _weights.LogTotal;

    internal StoryWeights Weights => _weights;

    private StateLayout Layout => _weights.Kernel.Model.Layout;

    /// <summary>Weighs every story of a boat's readings.</summary>
    /// <exception cref="ArgumentException">Nothing was read.</exception>
    public static Diagnosis Of(BoatReadings boat, BoatContext context, DiagnosingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(settings);
        if (boat.Readings.Count == 0)
        {
            throw new ArgumentException($"Nothing was read on {boat.Boat}.", nameof(boat));
        }

        var model = new LinearModel(boat, context, settings);
        var reports = new ReportEvidence(context.Reports, model.Layout, settings);
        return new(new StoryWeights(new EvidenceKernel(model), Openings.Of(model), reports));
    }

    /// <summary>The probability of a cause, at a gate or boat-wide, over all stories that have it.</summary>
    public double Probability(Func<CausePart, bool> isIt)
    {
        ArgumentNullException.ThrowIfNull(isIt);
        double sum = 0;
        for (int story = 0; story < _weights.Count; story++)
        {
            if (_weights.Parts(story).Any(opening => isIt(opening.Part)))
            {
                sum += _weights.Probability(story);
            }
        }

        return sum;
    }

    /// <inheritdoc/>
    public GaussianMixture At(GatePlace gate, OarAngle at)
    {
        PitchSlopes slopes = PitchSlopes.At(at, gate.Side, Lie.Upright);
        int first = Layout.Gate(gate);
        return Mixture([first, first + 1, first + 2], [1, slopes.Aft, slopes.Out]);
    }

    private GateDiagnosis Gate(GatePlace gate)
    {
        int at = Layout.Gate(gate);
        double[] byCause = new double[Causes.All.Count];
        double none = 0;
        for (int story = 0; story < _weights.Count; story++)
        {
            CausePart? part = _weights.Parts(story).FirstOrDefault(o => o.Part.Touches(gate))?.Part;
            if (part is null)
            {
                none += _weights.Probability(story);
            }
            else
            {
                byCause[(int)part.Cause] += _weights.Probability(story);
            }
        }

        IEnumerable<CauseProbability> causes = Causes.All
            .Where(c => byCause[(int)c] > 0)
            .Select(c => new CauseProbability(c, byCause[(int)c]))
            .Append(new(null, none))
            .OrderByDescending(c => c.Probability);
        return new(gate, Unknown(at), Unknown(at + 1), Unknown(at + 2), [.. causes]);
    }

    private Estimate Unknown(int at)
    {
        GaussianMixture mixture = Mixture([at], [1]);
        return Estimate.FromDegrees(mixture.Mean, mixture.Sd);
    }

    private GaussianMixture Mixture(ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        double[] means = new double[_states.Length];
        double[] deviations = new double[_states.Length];
        for (int i = 0; i < _states.Length; i++)
        {
            means[i] = _states[i].Mean(at, weights);
            deviations[i] = Math.Sqrt(Math.Max(0, _states[i].Covariance(at, weights, at, weights)));
        }

        return new(_kept, means, deviations);
    }

    private List<Story> TellStories()
    {
        const double WorthTelling = 1e-4;
        return [.. Enumerable.Range(0, _weights.Count)
            .Where(i => _weights.Probability(i) >= WorthTelling)
            .OrderByDescending(_weights.Probability)
            .Select(i => new Story([.. _weights.Parts(i).Select(o => o.Part)], _weights.Probability(i)))];
    }
}
