using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Support;

/// <summary>Readings as a test takes them: the default gauge, the boat upright with the bubble centred, unless it says otherwise.</summary>
internal static class Taken
{
    public static MeasuringSettings Settings => MeasuringSettings.Default;

    public static Gauge Gauge { get; } = Settings.GaugeNamed("the gauge");

    public static BoatLie Level { get; } = new(Lie.Upright, new HullLevel.BubbleCentred());

    public static BoatLie ByEye { get; } = new(Lie.Upright, new HullLevel.ByEye());

    public static GatePlace Seat(int seat, Side side = Side.Port) => new(seat, side);

    public static Reading Gate(
        GatePlace gate, Station station, double degrees, BoatLie? lie = null, Gauge? gauge = null, Rowing rowing = Rowing.Sweep) =>
        new(ReadItem.Gate, gate, Settings.Angles(rowing).Point(station), Angle.FromDegrees(degrees), lie ?? Level, gauge ?? Gauge);

    public static Reading GateAt(GatePlace gate, double oarAngle, double degrees, BoatLie? lie = null) =>
        new(ReadItem.Gate, gate, Settings.Sweep.Point(OarAngle.FromDegrees(oarAngle)), Angle.FromDegrees(degrees), lie ?? Level, Gauge);

    public static Reading Item(ReadItem item, GatePlace gate, double degrees) =>
        new(item, gate, Settings.Sweep.Point(Station.Abeam), Angle.FromDegrees(degrees), Level, Gauge);

    public static BoatLie Read(Lie lie, double bowHigh, double portLow) =>
        new(lie, new HullLevel.Read(HullAttitude.FromDegrees(bowHigh, portLow)));

    public static Gauge GaugeOf(string name, double resolution, double repeatability, double zero, double zeroU) => new(
        name,
        Angle.FromDegrees(resolution),
        Angle.FromDegrees(repeatability),
        new(Estimate.FromDegrees(zero, zeroU), zeroU < 0.1));
}
