using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Bench.Boats;

/// <summary>
/// Eights as a boathouse has them, the same ones every time: gates healthy but for one in fifty, a hull levelled by
/// eye, readings to half a degree at catch, abeam and finish, and bow's catch read once more.
/// </summary>
internal static class Eights
{
    public const int Readings = 25;

    private static readonly Side[] Rig =
        [Side.Starboard, Side.Port, Side.Starboard, Side.Port, Side.Starboard, Side.Port, Side.Starboard, Side.Port];

    /// <summary>The readings of the boat of that number, the repeat last.</summary>
    public static IReadOnlyList<Reading> Read(int number)
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        var chance = new Chance(number);
        var hull = HullAttitude.FromDegrees(chance.Normal(0.3), chance.Normal(0.3));
        var lie = new BoatLie(Lie.Upright, new HullLevel.ByEye());
        Gauge gauge = settings.GaugeNamed("blue");
        var gates = Enumerable.Range(1, Rig.Length).Select(seat => (new GatePlace(seat, Rig[seat - 1]), Gate(chance))).ToList();
        var readings = new List<Reading>(Readings);
        foreach ((GatePlace place, GateState gate) in gates)
        {
            foreach (Station station in Stations.All)
            {
                readings.Add(Take(place, gate, station));
            }
        }

        readings.Add(Take(gates[0].Item1, gates[0].Item2, Station.Catch));
        return readings;

        Reading Take(GatePlace place, GateState gate, Station station)
        {
            StrokePoint at = settings.Sweep.Point(station);
            double shown = PitchGeometry.At(at.Angle, gate, place.Side, hull).Degrees + chance.Normal(0.2);
            return new(ReadItem.Gate, place, at, Angle.FromDegrees(Math.Round(2 * shown) / 2), lie, gauge);
        }
    }

    private static GateState Gate(Chance chance) => chance.OneIn(50)
        ? GateState.FromDegrees(4 + chance.Normal(2), chance.Normal(2.5), chance.Normal(2.5))
        : GateState.FromDegrees(4 + chance.Normal(0.3), chance.Normal(0.3), chance.Normal(0.3));
}
