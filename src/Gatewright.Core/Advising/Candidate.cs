using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>A reading that could be taken next, and how each gate that it bears on sees it.</summary>
internal sealed record Candidate(ReadingChoice Choice, IReadOnlyList<(GateView View, Observation Observation)> Looks);

/// <summary>The readings that could be taken next on a boat.</summary>
internal sealed class Candidates(BoatReadings boat, LinearModel model)
{
    private readonly ViewLayout _layout = new(model);
    private readonly UsualWay _way = UsualWay.Of(boat);

    private MeasuringSettings Settings => model.Settings.Measuring;

    /// <summary>The readings of one gate, its pin and its oar.</summary>
    public IEnumerable<Candidate> At(GateView view)
    {
        GatePlace gate = view.Gate;
        StationAngles angles = Settings.Angles(boat.Class.Rowing);
        List<ReadingChoice> choices =
        [
            .. Stations.All.Select(station => new ReadingChoice(NextItem.Gate, gate, angles.Point(station))),
            new(NextItem.PinAft, gate),
            new(NextItem.PinOut, gate),
            new(NextItem.GatePitch, gate),
        ];
        if (model.Layout.Sleeve(gate) is not null)
        {
            choices.Add(new(NextItem.Sleeve, gate));
        }

        return choices.Select(choice =>
        {
            Reading reading = ReadingTaken.Further(boat, choice, default, Settings);
            var observation = new Observation([_layout.Sum(reading)], ReadingNoise.VarianceOf(reading, Settings));
            return new Candidate(choice, [(view, observation)]);
        });
    }

    /// <summary>
    /// Looks at what the boat shares. What was read on this boat, or checked by reversal, is not asked for again: a
    /// second look of the same kind weighs nothing that the first did not.
    /// </summary>
    public IEnumerable<Candidate> Shared(IReadOnlyList<GateView> views)
    {
        if (_way.Lie.Level is not HullLevel.Read)
        {
            int level = _layout.Lie(_way.Lie);
            yield return Direct(new(NextItem.Level), Settings.LevelReadU.Degrees, level, level + 1);
        }

        for (int i = 0; i < model.Layout.Shared.Gauges.Count; i++)
        {
            Gauge gauge = model.Layout.Shared.Gauges[i];
            if (!gauge.Zero.IsChecked)
            {
                yield return Direct(
                    new(NextItem.GaugeReversed, Gauge: gauge.Name), Settings.CheckedGaugeZeroU.Degrees, _layout.Gauge(i));
            }
        }

        Candidate Direct(ReadingChoice choice, double u, params int[] unknowns) =>
            new(choice, [.. views.Select(view => (view, Observation.Direct(view, u, unknowns)))]);
    }
}
