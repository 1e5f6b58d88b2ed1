using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>A boat being read, one reading after another.</summary>
internal sealed record Round(BoatClass Class, BoatLie Lie, Gauge Gauge)
{
    public static HullLevel Levelled { get; } = new HullLevel.Read(HullAttitude.Level);

    public IReadOnlyList<Reading> Taken { get; init; } = [];

    public BoatReadings Readings => new("boat", Class, Taken);

    public BoatCheck Check => BoatCheck.Of(Readings, BoatContext.None, CheckSettings.Default);

    public Advice Advice => Advisor.For(Check, AdvisingSettings.Default);

    private static MeasuringSettings Settings => MeasuringSettings.Default;

    public static Round Of(string boatClass, HullLevel? level = null, Lie lie = Core.Lie.Upright) =>
        new(BoatClass.Parse(boatClass), new(lie, level ?? Levelled), Settings.GaugeNamed("gauge"));

    /// <summary>Every gate in turn at one station; in sweep with seat 1 to starboard.</summary>
    public static Round At(Station station, string boatClass, HullLevel? level, params double[] shown)
    {
        Round round = Of(boatClass, level);
        List<GatePlace> gates = Gates(round.Class);
        Assert.Equal(gates.Count, shown.Length);
        return gates.Zip(shown).Aggregate(round, (r, read) => r.Gate(read.First, station, read.Second));
    }

    public static Round Abeam(string boatClass, HullLevel? level, params double[] shown) =>
        At(Station.Abeam, boatClass, level, shown);

    /// <summary>Every gate of a class, from the bow, port first; in sweep every other side, seat 1 to starboard.</summary>
    public static List<GatePlace> Gates(BoatClass boatClass) =>
        [.. Enumerable.Range(1, boatClass.Seats).SelectMany<int, GatePlace>(seat => boatClass.Rowing == Rowing.Scull
            ? [new(seat, Side.Port), new(seat, Side.Starboard)]
            : [new(seat, seat % 2 == 0 ? Side.Port : Side.Starboard)])];

    public Round Gate(GatePlace gate, Station station, double shown) =>
        Read(ReadItem.Gate, gate, Settings.Angles(Class.Rowing).Point(station), shown);

    public Round Pin(ReadItem item, GatePlace gate, double shown) =>
        Read(item, gate, Settings.Angles(Class.Rowing).Point(Station.Abeam), shown);

    /// <summary>The boat seen in a mirror that stands along its keel: port is starboard.</summary>
    public Round Mirrored() => this with
    {
        Taken = [.. Taken.Select(r => r with { Gate = r.Gate with { Side = r.Gate.Side.Opposite() } })],
    };

    private Round Read(ReadItem item, GatePlace gate, StrokePoint at, double shown) =>
        this with { Taken = [.. Taken, new(item, gate, at, Angle.FromDegrees(shown), Lie, Gauge)] };
}
