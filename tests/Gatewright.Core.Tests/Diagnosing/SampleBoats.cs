using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>One boat of every kind that the model treats in its own way.</summary>
internal static class SampleBoats
{
    private static readonly Gauge Second = Usual.GaugeNamed("second") with { Zero = new(Estimate.FromDegrees(0.25, 0.4), IsChecked: true) };

    public static IReadOnlyDictionary<string, (BoatReadings Boat, BoatContext Context)> All { get; } =
        new Dictionary<string, (BoatReadings, BoatContext)>
        {
            ["an eight read at three stations"] = (Eight(Stations.All, Uneven, Tilted(Lie.Inverted)), BoatContext.None),
            ["a boat read in two lyings with two gauges"] = (TwoLyings(), BoatContext.None),
            ["pins only"] = (Pins(), BoatContext.None),
            ["gates against their pins"] =
                (Boat("2-", Read(ReadItem.GatePitch, Starboard(1), 2), Read(Port(2), Station.Catch, 4.5)), BoatContext.None),
            ["a sleeve read, and a crab told"] = (Oars(), Told(new Report(ReportKind.CrabEarly, Port(2)))),
            ["stamped and set"] = (Eight([Station.Abeam], Uneven), new() { Targets = Stamps() }),
            ["riggers refitted, their leans known"] = (Eight(Stations.All, Uneven), Refitted(known: true)),
            ["riggers refitted, their leans not known"] = (Eight(Stations.All, Uneven), Refitted(known: false)),
            ["one gate read once"] = (Boat("1x", Read(Port(1), Station.Catch, 1, rowing: Rowing.Scull)), BoatContext.None),
            ["one gate read twice at one station"] =
                (Boat("2-", Read(Port(2), Station.Finish, 1), Read(Port(2), Station.Finish, 2)), BoatContext.None),
        };

    private static double Uneven(int seat, Station station) =>
        4 + ((seat * 7 % 5) * 0.5) - 1 + (seat == 3 ? 1.5 - (1.5 * (int)station) : 0);

    private static BoatLie Tilted(Lie lie) => new(lie, new HullLevel.Read(HullAttitude.FromDegrees(0.6, -0.3)));

    private static BoatReadings TwoLyings()
    {
        BoatLie[] lies = [Tilted(Lie.Upright), new(Lie.Inverted, new HullLevel.ByEye())];
        Gauge[] gauges = [UsualGauge, Second];
        return Boat("2x", [.. lies.Zip(gauges).SelectMany(pair => new[] { Port(1), Starboard(1), Port(2), Starboard(2) }
            .SelectMany(gate => new[] { Station.Catch, Station.Finish }
                .Select(at => Read(gate, at, gate.Seat + (at == Station.Catch ? 2.5 : 2), pair.First, pair.Second, Rowing.Scull))))]);
    }

    private static BoatReadings Pins() => Boat(
        "4-",
        [.. Enumerable.Range(1, 4).SelectMany(seat => new[]
        {
            Read(ReadItem.PinAft, Gate(seat), 0.5 * seat),
            Read(ReadItem.PinOut, Gate(seat), 1 - (0.5 * seat)),
        })]);

    private static BoatReadings Oars() => Boat(
        "2-",
        Read(Starboard(1), Station.Abeam, 4),
        Read(Port(2), Station.Abeam, 4.5),
        Read(Port(2), Station.Catch, 4),
        Read(ReadItem.Sleeve, Starboard(1), -2));

    private static BoatContext Told(params Report[] reports) => new() { Reports = reports };

    private static Dictionary<GatePlace, GateState> Stamps() =>
        new() { [Starboard(1)] = GateState.FromDegrees(6, 0, 0), [Port(2)] = GateState.FromDegrees(3, 0.5, 1) };

    private static BoatContext Refitted(bool known) => new()
    {
        Reports = [.. new[] { 2, 3, 6 }.Select(seat => new Report(ReportKind.Refitted, Gate(seat)))],
        LastGood = known
            ? new Dictionary<GatePlace, PinLean>
            {
                [Gate(2)] = PinLean.FromDegrees(0.8, 0.2),
                [Gate(3)] = PinLean.FromDegrees(-0.4, 1.5),
                [Gate(6)] = PinLean.FromDegrees(0, -0.7),
            }
            : new Dictionary<GatePlace, PinLean> { [Gate(2)] = PinLean.FromDegrees(0.8, 0.2) },
    };
}
