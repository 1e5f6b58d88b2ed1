using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>
/// Says which reading to take next: the one expected to take most doubt away, a second, about what is wrong and how
/// the boat is judged; or that enough has been read.
/// </summary>
/// <remarks>
/// The doubt about a verdict is, where a gate was not read, whether its pitch there will prove to be below the floor,
/// outside the limits or inside; where it was read and judged not good, whether it really is on the wrong side of the
/// limit. Where it was read and judged good there is none.
/// </remarks>
public sealed class Advisor
{
    private readonly BoatCheck _check;
    private readonly AdvisingSettings _settings;
    private readonly LinearModel _model;
    private readonly List<GateView> _views;
    private readonly JudgedDoubts _judged;

    private Advisor(BoatCheck check, AdvisingSettings settings)
    {
        _check = check;
        _settings = settings;
        StoryWeights weights = check.Diagnosis.Weights;
        _model = weights.Kernel.Model;
        var stories = new StoryGroups(weights);
        var layout = new ViewLayout(_model);
        _views = [.. _model.Layout.Gates.Select(gate => GateView.Of(gate, stories, layout, NotRead(gate)))];
        _judged = new(check);
    }

    /// <summary>Advises on a boat that has been checked.</summary>
    public static Advice For(BoatCheck check, AdvisingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(settings);
        return new Advisor(check, settings).Advise();
    }

    private Advice Advise()
    {
        bool found = CausesFound();
        bool settled = VerdictsSettled();
        if (IsDecided(found, settled))
        {
            return new(found, settled, true, null, []);
        }

        List<Weighed> ranked = [.. CandidateReadings()
            .Select(Weigh)
            .OrderByDescending(w => Math.Round(w.Reading.BitsPerSecond, 9))];
        int best = ranked.FindIndex(w => IsLikelyAtFault(w.Reading.Choice));
        best = best >= 0 ? best : ranked.FindIndex(w => w.Reading.Bits >= _settings.LeastGainBits);
        IReadOnlyList<NextReading> others = [.. ranked.Where((_, i) => i != best).Select(w => w.Reading)];
        return new(found, settled, false, best < 0 ? null : Told(ranked[best]), others);
    }

    private IEnumerable<Candidate> CandidateReadings()
    {
        var candidates = new Candidates(_check.Readings, _model);
        List<GateView> doubtful = [.. _views
            .OrderByDescending(v => Math.Round(v.Doubt, 9))
            .Take(_settings.MostGates)];
        return doubtful.SelectMany(candidates.At).Concat(candidates.Shared(doubtful));
    }

    private Weighed Weigh(Candidate candidate)
    {
        double causes = double.NegativeInfinity;
        double verdicts = _judged.Drop(candidate.Choice);
        (GateView, Observation) telling = candidate.Looks[0];
        foreach ((GateView view, Observation observation) in candidate.Looks)
        {
            (double causesLeft, double verdictsLeft) = Expected(view, observation);
            double told = Entropy.Bits(view.Weights) - causesLeft;
            verdicts += view.ClassProbabilities.Sum(c => Entropy.Bits(c)) - verdictsLeft;
            if (told > causes + 1e-9)
            {
                (causes, telling) = (told, (view, observation));
            }
        }

        ReadingChoice choice = candidate.Choice;
        return new(new(choice, causes, verdicts, _settings.Times.Of(choice.Item)), telling);
    }

    /// <summary>
    /// A level or gauge that is more likely than not what is wrong comes before all else: until it has been read every
    /// verdict on the boat is off by as much, whatever the model is sure of.
    /// </summary>
    private bool IsLikelyAtFault(ReadingChoice choice) => choice.Item switch
    {
        NextItem.Level => _check.Diagnosis.Probability(p => p.Cause == Cause.HullLevel) > 0.5,
        NextItem.GaugeReversed => _check.Diagnosis.Probability(p => p.Gauge == choice.Gauge && p.Cause == Cause.GaugeZero) > 0.5,
        _ => false,
    };

    private static (double Causes, double Verdicts) Expected(GateView view, Observation observation) =>
        new ExpectedEntropy(observation, new(observation, view), view).Bits();

    /// <summary>The reading with what its outcomes would mean to the gate that learns most about its causes.</summary>
    private static NextReading Told(Weighed weighed)
    {
        (NextReading reading, (GateView view, Observation observation)) = weighed;
        int along = observation.Dimensions == 2
            && Expected(view, observation.Along(1)).Causes < Expected(view, observation.Along(0)).Causes ? 1 : 0;
        return reading with
        {
            Outcomes = OutcomeBands.Of(new(observation.Along(along), view), view.Accounts),
            Scale = reading.Choice.Item switch
            {
                NextItem.Level => along == 0 ? OutcomeScale.BowHigh : OutcomeScale.PortLow,
                NextItem.GaugeReversed => OutcomeScale.GaugeZero,
                _ => OutcomeScale.Reading,
            },
        };
    }

    /// <summary>
    /// A verdict other than good wants a cause at that gate. Level and gauge explain it too, but then nothing is mended
    /// until they have been read. Too wide a range wants none: healthy gates may be further apart than a standard allows.
    /// </summary>
    private bool IsDecided(bool found, bool settled)
    {
        List<GatePlace> notGood = [.. _check.Verdict.Gates
            .Where(g => g.Reasons.Any(r => r.Kind != ReasonKind.Range))
            .Select(g => g.Gate)];
        return (settled && notGood.Count == 0)
            || (found && notGood.TrueForAll(gate =>
                _check.Diagnosis.Gates.First(g => g.Gate == gate).Causes[0].Cause is not null));
    }

    private bool CausesFound() =>
        _check.Diagnosis.Gates.All(IsFound)
        && Causes.All.Where(c => c.IsBoatWide()).All(cause =>
        {
            double probability = _check.Diagnosis.Probability(p => p.Cause == cause);
            return Math.Max(probability, 1 - probability) >= _settings.CauseFound;
        });

    /// <summary>
    /// A pin leans by itself or with its rigger: that is told by looking, not by reading, and the leans are what is
    /// mended. So the three causes count together once both leans are known.
    /// </summary>
    private bool IsFound(GateDiagnosis gate)
    {
        double leaning = gate.Causes
            .Where(c => c.Cause is Cause.PinAft or Cause.PinOut or Cause.Rigger)
            .Sum(c => c.Probability);
        return gate.Causes[0].Probability >= _settings.CauseFound
            || (leaning >= _settings.CauseFound
                && gate.LeanAft.U <= _settings.LeanKnown
                && gate.LeanOut.U <= _settings.LeanKnown);
    }

    private bool VerdictsSettled() => _judged.Settled
        && _views.TrueForAll(v => v.ClassProbabilities.TrueForAll(c => c.Max() >= _settings.VerdictSettled));

    private List<VerdictStation> NotRead(GatePlace gate)
    {
        StationAngles angles = _model.Settings.Measuring.Angles(_check.Readings.Class.Rowing);
        return [.. Stations.All
            .Where(station => _check.Corrected.IndexOf(gate, station) < 0)
            .Select(s => VerdictStation.Of(s, angles.At(s), gate.Side, _check.Settings.Standard.At(s)))];
    }

    private sealed record Weighed(NextReading Reading, (GateView View, Observation Observation) Telling);
}
