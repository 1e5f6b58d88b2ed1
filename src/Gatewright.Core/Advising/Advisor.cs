using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;

namespace Gatewright.Core.Advising;

/// <summary>
/// Says which reading to take next: the one expected to take most doubt away, a second, about what is wrong and how
/// the boat is judged; or that enough has been read.
/// </summary>
/// <remarks>
/// The doubt about verdicts is that of the true pitch at each station being below the floor, outside the limits, or
/// inside them. Only the most doubtful gates and the likeliest stories enter: what is nearly certain cannot lose entropy.
/// </remarks>
public sealed class Advisor
{
    private readonly BoatCheck _check;
    private readonly AdvisingSettings _settings;
    private readonly LinearModel _model;
    private readonly List<Story> _stories;
    private readonly List<StoryState> _states;
    private readonly double[] _weights;
    private readonly List<(VerdictStation Station, double[] Classes)> _stations;

    private Advisor(BoatCheck check, AdvisingSettings settings)
    {
        _check = check;
        _settings = settings;
        StoryWeights all = check.Diagnosis.Weights;
        _model = all.Kernel.Model;
        List<int> likely = [.. Enumerable.Range(0, all.Count)
            .OrderByDescending(all.Probability)
            .Take(settings.MostStories)];
        double total = likely.Sum(all.Probability);
        _weights = [.. likely.Select(i => all.Probability(i) / total)];
        _states = [.. likely.Select(all.State)];
        _stories = [.. likely.Select(i => new Story([.. all.Parts(i).Select(o => o.Part)], all.Probability(i)))];
        _stations = [.. VerdictStations().Select(s => (s, ClassesOf(s)))];
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
        bool settled = _stations.All(s => s.Classes.Max() >= _settings.VerdictSettled);
        if (found || settled)
        {
            return new(found, settled, null, []);
        }

        List<(NextReading Reading, OutcomeModel Outcomes)> ranked = [.. Candidates.Of(_check.Readings, _model, DoubtfulGates())
            .Select(observation => Expect(observation, new OutcomeModel(observation, _states, _weights)))
            .OrderByDescending(n => n.Reading.BitsPerSecond)];
        int best = ranked.FindIndex(n => n.Reading.Bits >= _settings.LeastGainBits);
        IReadOnlyList<NextReading> others = [.. ranked.Where((_, i) => i != best).Select(n => n.Reading)];
        return best < 0
            ? new(found, settled, null, others)
            : new(found, settled, ranked[best].Reading with { Outcomes = OutcomeBands.Of(ranked[best].Outcomes, _stories) }, others);
    }

    private (NextReading Reading, OutcomeModel Outcomes) Expect(Observation observation, OutcomeModel outcomes)
    {
        List<VerdictStation> stations = [.. BearsOn(observation.Choice.Gate)];
        (double causes, double verdicts) = new ExpectedEntropy(observation, outcomes, _states, stations).Bits();
        double before = stations.Sum(s => Entropy.Bits(ClassesOf(s)));
        var reading = new NextReading(
            observation.Choice,
            Math.Max(0, Entropy.Bits(_weights) - causes),
            Math.Max(0, before - verdicts),
            _settings.Times.Of(observation.Choice.Item),
            []);
        return (reading, outcomes);
    }

    /// <summary>A gate's reading bears on its own verdicts; the level and the gauge on the most doubtful of the boat.</summary>
    private IEnumerable<VerdictStation> BearsOn(GatePlace? gate)
    {
        const int MostStations = 6;
        return gate is { } place
            ? _stations.Where(s => s.Station.Gate == place).Select(s => s.Station)
            : _stations.OrderByDescending(s => Entropy.Bits(s.Classes)).Take(MostStations).Select(s => s.Station);
    }

    private bool CausesFound() =>
        _check.Diagnosis.Gates.All(g => g.Causes[0].Probability >= _settings.CauseFound)
        && Causes.All.Where(c => c.IsBoatWide()).All(cause =>
        {
            double probability = _check.Diagnosis.Probability(p => p.Cause == cause);
            return Math.Max(probability, 1 - probability) >= _settings.CauseFound;
        });

    private List<GatePlace> DoubtfulGates() =>
        [.. _check.Diagnosis.Gates
            .Select(g => (g.Gate, Bits: Doubt(g.Gate, g)))
            .Where(g => g.Bits >= _settings.LeastGainBits)
            .OrderByDescending(g => g.Bits)
            .Take(_settings.MostGates)
            .Select(g => g.Gate)];

    private double Doubt(GatePlace gate, GateDiagnosis diagnosis) =>
        Entropy.Bits([.. diagnosis.Causes.Select(c => c.Probability)])
        + _stations.Where(s => s.Station.Gate == gate).Sum(s => Entropy.Bits(s.Classes));

    private IEnumerable<VerdictStation> VerdictStations()
    {
        Standard standard = _check.Settings.Standard;
        var angles = _model.Settings.Measuring.Angles(_check.Readings.Class.Rowing);
        return _model.Layout.Gates.SelectMany(gate => Stations.All.Select(station =>
            VerdictStation.Of(gate, _model.Layout.Gate(gate), angles.At(station), standard.At(station))));
    }

    private double[] ClassesOf(VerdictStation station)
    {
        double[] classes = new double[VerdictStation.Classes];
        for (int k = 0; k < _states.Count; k++)
        {
            double mean = _states[k].Mean(station.At, station.Weights);
            double variance = _states[k].Covariance(station.At, station.Weights, station.At, station.Weights);
            station.Add(_weights[k], mean, Math.Sqrt(variance), classes);
        }

        return classes;
    }
}
