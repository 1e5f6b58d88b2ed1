using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>The readings that could be taken next on a boat, given which of its gates are worth asking about.</summary>
internal static class Candidates
{
    public static IEnumerable<Observation> Of(BoatReadings boat, LinearModel model, IReadOnlyList<GatePlace> gates)
    {
        BoatLie lie = MostUsed(boat.Readings, r => r.Lie);
        Gauge gauge = MostUsed(boat.Readings, r => r.Gauge);
        StationAngles angles = model.Settings.Measuring.Angles(boat.Class.Rowing);
        foreach (GatePlace gate in gates)
        {
            foreach (Station station in Stations.All)
            {
                StrokePoint at = angles.Point(station);
                yield return OfGate(new(NextItem.Gate, gate, at), ReadItem.Gate, at);
            }

            StrokePoint abeam = angles.Point(Station.Abeam);
            yield return OfGate(new(NextItem.PinAft, gate), ReadItem.PinAft, abeam);
            yield return OfGate(new(NextItem.PinOut, gate), ReadItem.PinOut, abeam);
            yield return OfGate(new(NextItem.GatePitch, gate), ReadItem.GatePitch, abeam);
            if (model.Layout.Sleeve(gate) is not null)
            {
                yield return OfGate(new(NextItem.Sleeve, gate), ReadItem.Sleeve, abeam);
            }

            Observation OfGate(ReadingChoice choice, ReadItem item, StrokePoint at) =>
                Observation.Of(choice, new(item, gate, at, Angle.Zero, lie, gauge), model);
        }

        int level = model.Layout.Lie(model.Layout.Shared.IndexOf(lie));
        yield return Observation.Direct(
            new(NextItem.Level), model.Settings.Measuring.LevelReadU.Degrees, level, level + 1);
        for (int i = 0; i < model.Layout.Shared.Gauges.Count; i++)
        {
            yield return Observation.Direct(
                new(NextItem.GaugeReversed, Gauge: model.Layout.Shared.Gauges[i].Name),
                model.Settings.Measuring.CheckedGaugeZeroU.Degrees,
                model.Layout.Gauge(i));
        }
    }

    /// <summary>A further reading is taken as most were; of several as common, as the latest was.</summary>
    private static T MostUsed<T>(IReadOnlyList<Reading> readings, Func<Reading, T> of)
        where T : class =>
        readings.GroupBy(of).OrderByDescending(g => g.Count()).ThenByDescending(g => g.Max(r => r.Lie.Date)).First().Key;
}
