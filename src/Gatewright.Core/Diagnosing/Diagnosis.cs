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
    private readonly int[] _kept;
    private readonly double[] _shares;

    private Diagnosis(StoryWeights weights)
    {
        _weights = weights;
        _kept = [.. Enumerable.Range(0, weights.Count).Where(story => weights.Probability(story) >= Negligible)];
        double whole = _kept.Sum(weights.Probability);
        _shares = [.. _kept.Select(story => weights.Probability(story) / whole)];
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
        TwinSearch.Of(_weights.Kernel, _weights.Openings, Marginals);

    /// <summary>ln p(readings), summed over all stories weighed by their prior odds; for comparing models.</summary>
    public double LogEvidence => _weights.LogTotal;

    internal StoryWeights Weights => _weights;

    private StateLayout Layout => _weights.Kernel.Model.Layout;

    private double[] Marginals => field ??= _weights.Marginals();

    /// <summary>
    /// What a gate is believed to be over all stories: the figures of <see cref="Gates"/> with their covariances, so that
    /// a pin's lean can be shown as a place and a pitch through the whole stroke.
    /// </summary>
    /// <exception cref="ArgumentException">Nothing was read of that gate.</exception>
    public GateBelief Belief(GatePlace gate)
    {
        Expect(gate);
        int first = Layout.Gate(gate);
        (double Mean, double Variance)[] own = [.. Enumerable.Range(first, 3).Select(at => Averaged([at], [1]))];
        double[] rows = new double[9];
        for (int i = 0; i < 3; i++)
        {
            rows[4 * i] = own[i].Variance;
            for (int j = 0; j < i; j++)
            {
                // Var(a + b) = Var a + Var b + 2 Cov(a, b), so that one way of averaging serves both.
                double both = Averaged([first + i, first + j], [1, 1]).Variance;
                rows[(3 * i) + j] = rows[(3 * j) + i] = (both - own[i].Variance - own[j].Variance) / 2;
            }
        }

        return new(gate, GateState.FromDegrees(own[0].Mean, own[1].Mean, own[2].Mean), new(3, rows));
    }

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
        var kernel = new EvidenceKernel(model);
        return new(new StoryWeights(kernel, Openings.Of(model), new ReportEvidence(kernel)));
    }

    /// <summary>The probability of a cause, at a gate or boat-wide, over all stories that have it.</summary>
    public double Probability(Func<CausePart, bool> isIt)
    {
        ArgumentNullException.ThrowIfNull(isIt);
        return _weights.AnyOf(isIt);
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">Nothing was read of that gate.</exception>
    public GaussianMixture At(GatePlace gate, OarAngle at)
    {
        Expect(gate);
        PitchSlopes slopes = PitchSlopes.At(at, gate.Side, Lie.Upright);
        int first = Layout.Gate(gate);
        var pitch = new StateSum(_weights.Kernel, [first, first + 1, first + 2], [1, slopes.Aft, slopes.Out]);
        double[] means = new double[_kept.Length];
        double[] deviations = new double[_kept.Length];
        for (int i = 0; i < _kept.Length; i++)
        {
            (means[i], double variance) = _weights.Table.Moments(_kept[i], pitch);
            deviations[i] = Math.Sqrt(Math.Max(0, variance));
        }

        return new(_shares, means, deviations);
    }

    /// <summary>
    /// A sum over what several gates are, averaged over all stories: what gates share, the level and a gauge's zero, cancels in
    /// it or adds up as it does in truth.
    /// </summary>
    /// <param name="shares">What it takes of gates.</param>
    /// <param name="also">What it takes of other unknowns: sleeves, gauges' zeros.</param>
    /// <exception cref="ArgumentException">Nothing was read of one of the gates.</exception>
    internal (double Mean, double Variance) Sum(ReadOnlySpan<GateShare> shares, params ReadOnlySpan<StateShare> also)
    {
        int[] at = new int[(3 * shares.Length) + also.Length];
        double[] weights = new double[at.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            Expect(shares[i].Gate);
            int first = Layout.Gate(shares[i].Gate);
            (at[3 * i], at[(3 * i) + 1], at[(3 * i) + 2]) = (first, first + 1, first + 2);
            (weights[3 * i], weights[(3 * i) + 1], weights[(3 * i) + 2]) = (shares[i].GatePitch, shares[i].Aft, shares[i].Out);
        }

        for (int i = 0; i < also.Length; i++)
        {
            int place = (3 * shares.Length) + i;
            (at[place], weights[place]) = (also[i].At, also[i].Weight);
        }

        return Averaged(at, weights);
    }

    private GateDiagnosis Gate(GatePlace gate)
    {
        double[] byCause = new double[Causes.All.Count];
        double wrong = 0;
        for (int i = 0; i < Marginals.Length; i++)
        {
            CausePart part = _weights.Openings[i].Part;
            if (part.Touches(gate))
            {
                byCause[(int)part.Cause] += Marginals[i];
                wrong += Marginals[i];
            }
        }

        // A story has one cause at most on a gate, so these exclude each other.
        var causes = new List<CauseProbability> { new(null, Math.Max(0, 1 - wrong)) };
        foreach (Cause cause in Causes.All)
        {
            if (byCause[(int)cause] > 0)
            {
                causes.Add(new(cause, Math.Min(1, byCause[(int)cause])));
            }
        }

        causes.Sort(MoreProbable);
        int at = Layout.Gate(gate);
        return new(gate, Unknown(at), Unknown(at + 1), Unknown(at + 2), causes);
    }

    /// <summary>Causes that read alike differ by rounding alone: those stand in the order of the list, whatever was read first.</summary>
    private static int MoreProbable(CauseProbability one, CauseProbability other) =>
        (Math.Round(other.Probability, 12), one.Cause).CompareTo((Math.Round(one.Probability, 12), other.Cause));

    private void Expect(GatePlace gate)
    {
        if (!Layout.Gates.Contains(gate))
        {
            throw new ArgumentException($"Nothing was read at {gate}: there is nothing to expect of it.", nameof(gate));
        }
    }

    private Estimate Unknown(int at)
    {
        (double mean, double variance) = Averaged([at], [1]);
        return Estimate.FromDegrees(mean, Math.Sqrt(variance));
    }

    /// <summary>A sum of unknowns averaged over all stories: what varies within them, and between them.</summary>
    private (double Mean, double Variance) Averaged(ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        var sum = new StateSum(_weights.Kernel, at, weights);
        double off = 0;
        double squares = 0;
        for (int i = 0; i < _kept.Length; i++)
        {
            (double mean, double variance) = _weights.Table.Moments(_kept[i], sum);
            double moved = mean - sum.Mean;
            off += _shares[i] * moved;
            squares += _shares[i] * (variance + (moved * moved));
        }

        return (sum.Mean + off, Math.Max(0, squares - (off * off)));
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
