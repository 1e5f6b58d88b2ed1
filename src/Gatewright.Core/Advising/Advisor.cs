using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
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

    /// <summary>Whether there is nothing left to find out, without asking what else could be read.</summary>
    public static bool IsDecided(BoatCheck check, AdvisingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(settings);
        return new Advisor(check, settings).Decide().IsDecided;
    }

    private Decision Decide() => new(_check, _views, _judged, _settings);

    private Advice Advise()
    {
        Decision decision = Decide();
        (bool found, bool settled) = (decision.CausesFound, decision.VerdictsSettled);
        if (decision.IsDecided)
        {
            return new(found, settled, true, null, []);
        }

        List<Weighed> ranked = [.. CandidateReadings(decision)
            .Select(Weigh)
            .OrderByDescending(w => Math.Round(w.Reading.BitsPerSecond, 9))];
        int best = ranked.FindIndex(w => IsLikelyAtFault(w.Reading.Choice));
        best = best >= 0 ? best : ranked.FindIndex(w => w.Reading.Bits >= _settings.LeastGainBits);
        IReadOnlyList<NextReading> others = [.. ranked.Where((_, i) => i != best).Select(w => w.Reading)];
        return new(found, settled, false, best < 0 ? null : Told(ranked[best]), others);
    }

    /// <summary>Of the gates that are out, if any are: the others are asked about once those are mended.</summary>
    private IEnumerable<Candidate> CandidateReadings(Decision decision)
    {
        var candidates = new Candidates(_check.Readings, _model);
        HashSet<GatePlace> wanting = decision.WantingACause;
        List<GateView> asked = [.. _views
            .Where(v => wanting.Count == 0 || wanting.Contains(v.Gate))
            .OrderByDescending(v => Math.Round(v.Doubt, 9))
            .Take(_settings.MostGates)];
        return asked.SelectMany(candidates.At).Concat(candidates.Shared(asked));
    }

    private Weighed Weigh(Candidate candidate)
    {
        double causes = double.NegativeInfinity;
        double verdicts = _judged.Drop(candidate.Choice);
        (GateView, Observation) telling = candidate.Looks[0];
        foreach ((GateView view, Observation observation) in candidate.Looks)
        {
            (double told, double settled) = Expected(view, observation);
            verdicts += settled;
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
        new ExpectedDrop(observation, new(observation, view), view).Bits();

    /// <summary>The reading with what its outcomes would mean to the gate that learns most about its causes.</summary>
    private static NextReading Told(Weighed weighed)
    {
        (NextReading reading, (GateView view, Observation observation)) = weighed;
        int along = observation.Dimensions == 2
            && Expected(view, observation.Along(1)).Causes > Expected(view, observation.Along(0)).Causes ? 1 : 0;
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

    private List<VerdictStation> NotRead(GatePlace gate)
    {
        StationAngles angles = _model.Settings.Measuring.Angles(_check.Readings.Class.Rowing);
        return [.. Stations.All
            .Where(station => _check.Corrected.IndexOf(gate, station) < 0)
            .Select(s => VerdictStation.Of(s, angles.At(s), gate.Side, _check.Settings.Standard.At(s)))];
    }

    private sealed record Weighed(NextReading Reading, (GateView View, Observation Observation) Telling);
}
