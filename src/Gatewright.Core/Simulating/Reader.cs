using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Simulating;

/// <summary>
/// Reads a simulated boat as a person would: the oar not held quite at its station, the gauge repeating only so well
/// and read to its step, on a hull and with a zero that are what they are.
/// </summary>
/// <remarks>
/// The geometry is exact, whereas the diagnosis is linear: what that costs shows in the simulation. After the level or
/// the gauge's zero has been read anew, go on with a reader whose plan says so.
/// </remarks>
/// <param name="boat">What the boat really is.</param>
/// <param name="plan">How it is said to lie, and what it is read with.</param>
/// <param name="draws">Random numbers.</param>
public sealed class Reader(TrueBoat boat, BoatPlan plan, Draws draws)
{
    private MeasuringSettings Settings => plan.Settings.Measuring;

    /// <summary>Every gate at every station of the plan.</summary>
    public BoatReadings Round(string name) =>
        new(name, plan.Class, [.. plan.Gates.SelectMany(gate => plan.Stations.Select(station => Gate(gate, station)))]);

    /// <summary>One gate at one station.</summary>
    public Reading Gate(GatePlace gate, Station station)
    {
        StrokePoint at = Settings.Angles(plan.Class.Rowing).Point(station);
        Angle held = at.Angle.Angle + draws.Normal(station == Station.Abeam ? Settings.HeldAbeamU : Settings.HeldAngleU);
        Pitch pitch = PitchGeometry.At(new(held), boat.Gates[gate], gate.Side, boat.Hull, plan.Lie.Lie);
        return Shown(ReadItem.Gate, gate, at, pitch.Angle + boat.GaugeZero);
    }

    /// <summary>
    /// Something else of a gate: a lean of its pin, seen square-on, to which the hull's own tilt that way adds; the gate
    /// against its pin, which neither hull nor zero enters; its oar's sleeve.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The gate's face, which is read at a station.</exception>
    public Reading Item(ReadItem item, GatePlace gate)
    {
        GateState state = boat.Gates[gate];
        Angle rise = plan.Lie.Lie.Sign() * boat.Hull.BowHigh.Angle;
        Angle roll = plan.Lie.Lie.Sign() * gate.Side.Sign() * boat.Hull.PortLow.Angle;
        Angle value = item switch
        {
            ReadItem.PinAft => state.Pin.Aft.Angle + rise + boat.GaugeZero,
            ReadItem.PinOut => state.Pin.Out.Angle + roll + boat.GaugeZero,
            ReadItem.GatePitch => state.GatePitch.Angle,
            ReadItem.Sleeve => boat.Sleeves[gate].Angle + rise + boat.GaugeZero,
            _ => throw new ArgumentOutOfRangeException(nameof(item), item, "A gate's face is read at a station."),
        };
        return Shown(item, gate, Settings.Angles(plan.Class.Rowing).Point(Station.Abeam), value);
    }

    /// <summary>The boat's level, read anew: the lying with what was read in place of what was said.</summary>
    public BoatLie Level() => plan.Lie with
    {
        Level = new HullLevel.Read(new(
            new(boat.Hull.BowHigh.Angle + draws.Normal(Settings.LevelReadU)),
            new(boat.Hull.PortLow.Angle + draws.Normal(Settings.LevelReadU)))),
    };

    /// <summary>The gauge, its zero found by reversal.</summary>
    public Gauge Reversed() => plan.Gauge with
    {
        Zero = new(new(boat.GaugeZero + draws.Normal(Settings.CheckedGaugeZeroU), Settings.CheckedGaugeZeroU), IsChecked: true),
    };

    private Reading Shown(ReadItem item, GatePlace gate, StrokePoint at, Angle exact)
    {
        double shown = (exact + draws.Normal(plan.Gauge.Repeatability)).Degrees;
        double step = plan.Gauge.Resolution.Degrees;
        double rounded = step > 0 ? step * Math.Round(shown / step, MidpointRounding.AwayFromZero) : shown;
        return new(item, gate, at, Angle.FromDegrees(rounded), plan.Lie, plan.Gauge);
    }
}
