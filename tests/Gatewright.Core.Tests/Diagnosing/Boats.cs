using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>Boats and readings as the tests need them.</summary>
internal static class Boats
{
    public static MeasuringSettings Usual => MeasuringSettings.Default;

    public static Gauge UsualGauge { get; } = Usual.GaugeNamed("gauge");

    /// <summary>On trestles, its level read and found level.</summary>
    public static BoatLie Upright { get; } = new(Lie.Upright, new HullLevel.Read(HullAttitude.Level));

    /// <summary>On its rack, its level read and found level.</summary>
    public static BoatLie Inverted { get; } = new(Lie.Inverted, new HullLevel.Read(HullAttitude.Level));

    public static GatePlace Port(int seat) => new(seat, Side.Port);

    public static GatePlace Starboard(int seat) => new(seat, Side.Starboard);

    /// <summary>In an eight with stroke on port.</summary>
    public static GatePlace Gate(int seat) => seat % 2 == 0 ? Port(seat) : Starboard(seat);

    public static Reading Read(
        GatePlace gate, Station station, double degrees, BoatLie? lie = null, Gauge? gauge = null, Rowing rowing = Rowing.Sweep) =>
        new(ReadItem.Gate, gate, Usual.Angles(rowing).Point(station), Angle.FromDegrees(degrees), lie ?? Upright, gauge ?? UsualGauge);

    public static Reading Read(ReadItem item, GatePlace gate, double degrees, BoatLie? lie = null, Gauge? gauge = null) =>
        Read(gate, Station.Abeam, degrees, lie, gauge) with { Item = item };

    public static BoatReadings Boat(string boatClass, params Reading[] readings) =>
        new("boat", BoatClass.Parse(boatClass), readings);

    /// <summary>An eight read at some stations, each reading by seat and station.</summary>
    public static BoatReadings Eight(IReadOnlyList<Station> stations, Func<int, Station, double> degrees, BoatLie? lie = null) =>
        Boat("8+", [.. Enumerable.Range(1, 8)
            .SelectMany(seat => stations.Select(at => Read(Gate(seat), at, degrees(seat, at), lie)))]);

    public static Diagnosis Diagnose(BoatReadings boat, BoatContext? context = null, DiagnosingSettings? settings = null) =>
        Diagnosis.Of(boat, context ?? BoatContext.None, settings ?? DiagnosingSettings.Default);

    /// <summary>The probability of one cause at one gate.</summary>
    public static double Of(this Diagnosis diagnosis, Cause cause, GatePlace gate) =>
        diagnosis.Probability(part => part.Cause == cause && part.Touches(gate));

    /// <summary>What the diagnosis says of one gate.</summary>
    public static GateDiagnosis At(this Diagnosis diagnosis, GatePlace gate) => diagnosis.Gates.Single(g => g.Gate == gate);
}
