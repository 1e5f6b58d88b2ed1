using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Simulating;

namespace Gatewright.Core.Tests.Simulating;

/// <summary>That a simulated boat is read as the geometry and the reading model say.</summary>
public sealed class ReaderTests
{
    private static readonly GatePlace Gate = new(3, Side.Starboard);

    private static readonly TrueBoat Boat = new(
        [],
        new Dictionary<GatePlace, GateState> { [Gate] = GateState.FromDegrees(4.2, -1, 2) },
        new Dictionary<GatePlace, SleeveError> { [Gate] = SleeveError.FromDegrees(-1.5) },
        HullAttitude.FromDegrees(0.8, -0.6),
        Angle.FromDegrees(0.3));

    /// <summary>Everything exact: no step, no noise, the oar held where it should be.</summary>
    private static BoatPlan Exact(Lie lie) => new(BoatClass.Parse("4-"))
    {
        Lie = new(lie, new HullLevel.ByEye()),
        Gauge = new("exact", Angle.Zero, Angle.Zero, GaugeZero.Assumed(Angle.Zero)),
        Settings = DiagnosingSettings.Default with
        {
            Measuring = MeasuringSettings.Default with
            {
                HeldAngleU = Angle.Zero, HeldAbeamU = Angle.Zero, LevelReadU = Angle.Zero, CheckedGaugeZeroU = Angle.Zero,
            },
        },
    };

    [Theory]
    [InlineData(Lie.Upright, Station.Catch)]
    [InlineData(Lie.Upright, Station.Finish)]
    [InlineData(Lie.Inverted, Station.Catch)]
    [InlineData(Lie.Inverted, Station.Abeam)]
    public void Without_noise_a_gate_shows_its_exact_pitch_and_the_gauges_zero(Lie lie, Station station)
    {
        Reading reading = new Reader(Boat, Exact(lie), SeededDraws.Of(1)).Gate(Gate, station);
        OarAngle at = MeasuringSettings.Default.Sweep.At(station);
        double exact = PitchGeometry.At(at, Boat.Gates[Gate], Side.Starboard, Boat.Hull, lie).Degrees;
        Assert.Equal(exact + 0.3, reading.Value.Degrees, 1e-12);
        Assert.Equal((ReadItem.Gate, Gate, (Station?)station, lie), (reading.Item, reading.Gate, reading.At.Station, reading.Lie.Lie));
    }

    /// <summary>Upright the hull's rise and roll add; a roll to port is one away from starboard. Inverted they take away.</summary>
    [Theory]
    [InlineData(Lie.Upright, ReadItem.PinAft, -1 + 0.8 + 0.3)]
    [InlineData(Lie.Inverted, ReadItem.PinAft, -1 - 0.8 + 0.3)]
    [InlineData(Lie.Upright, ReadItem.PinOut, 2 + 0.6 + 0.3)]
    [InlineData(Lie.Inverted, ReadItem.PinOut, 2 - 0.6 + 0.3)]
    [InlineData(Lie.Upright, ReadItem.Sleeve, -1.5 + 0.8 + 0.3)]
    [InlineData(Lie.Upright, ReadItem.GatePitch, 4.2)]
    [InlineData(Lie.Inverted, ReadItem.GatePitch, 4.2)]
    public void Without_noise_a_pin_or_sleeve_shows_its_lean_with_the_hulls(Lie lie, ReadItem item, double expected) =>
        Assert.Equal(expected, new Reader(Boat, Exact(lie), SeededDraws.Of(1)).Item(item, Gate).Value.Degrees, 1e-12);

    [Fact]
    public void A_gates_face_is_read_at_a_station() => Assert.Throws<ArgumentOutOfRangeException>(
        () => new Reader(Boat, Exact(Lie.Upright), SeededDraws.Of(1)).Item(ReadItem.Gate, Gate));

    [Fact]
    public void Level_and_zero_read_anew_are_the_true_ones()
    {
        var reader = new Reader(Boat, Exact(Lie.Inverted), SeededDraws.Of(1));
        Assert.Equal(new HullLevel.Read(Boat.Hull), reader.Level().Level);
        Assert.Equal(Lie.Inverted, reader.Level().Lie);
        Assert.Equal(0.3, reader.Reversed().Zero.Estimate.Value.Degrees, 1e-12);
        Assert.True(reader.Reversed().Zero.IsChecked);
    }

    [Fact]
    public void Readings_are_to_the_gauges_step()
    {
        BoatPlan plan = Exact(Lie.Upright) with { Gauge = MeasuringSettings.Default.GaugeNamed("gauge") };
        var reader = new Reader(Boat, plan, SeededDraws.Of(2));
        Assert.All(Enumerable.Range(0, 100), _ =>
        {
            double steps = reader.Gate(Gate, Station.Catch).Value.Degrees / 0.5;
            Assert.Equal(Math.Round(steps), steps);
        });
    }

    /// <summary>
    /// The scatter about the exact pitch is √(0.5²/12 + 0.2² + held²), held being the slope of the pitch with oar angle times 1° or
    /// 5°. The slope is that of the boat: o cos θ − a sin θ, 0.3° a radian (rms) for healthy pins, and 0.7 for a hull
    /// levelled by eye, 0.76 in all. (The diagnosis takes it as 0.5.)
    /// </summary>
    [Theory]
    [InlineData(Station.Abeam, 1.0)]
    [InlineData(Station.Finish, 5.0)]
    public void Readings_scatter_as_the_reading_model_says(Station station, double held)
    {
        const int Many = 20_000;
        BoatPlan plan = new(BoatClass.Parse("4-")) { Lie = new(Lie.Upright, new HullLevel.ByEye()) };
        Draws draws = SeededDraws.Of(3);
        OarAngle at = MeasuringSettings.Default.Sweep.At(station);

        // The boat is drawn anew each time: one boat's rounding error is not even, many boats' are.
        double squares = 0;
        for (int i = 0; i < Many; i++)
        {
            TrueBoat boat = BoatDraw.With(plan, [], draws);
            GatePlace gate = plan.Gates[0];
            double exact = PitchGeometry.At(at, boat.Gates[gate], gate.Side, boat.Hull, Lie.Upright).Degrees;
            squares += Math.Pow(new Reader(boat, plan, draws).Gate(gate, station).Value.Degrees - exact - boat.GaugeZero.Degrees, 2);
        }

        double slope = 0.76 * held * Math.PI / 180;
        double expected = (0.25 / 12) + 0.04 + (slope * slope);

        // A variance from 20,000 readings is known to 1 %: three times that.
        Assert.Equal(1, squares / Many / expected, 0.03);
    }

    [Fact]
    public void A_round_reads_every_gate_at_every_station_of_the_plan()
    {
        BoatPlan plan = new(BoatClass.Parse("2x")) { Stations = [Station.Catch, Station.Finish] };
        Draws draws = SeededDraws.Of(4);
        BoatReadings round = new Reader(BoatDraw.With(plan, [], draws), plan, draws).Round("boat");
        Assert.Equal(
            plan.Gates.SelectMany(g => new[] { (g, (Station?)Station.Catch), (g, Station.Finish) }),
            round.Readings.Select(r => (r.Gate, r.At.Station)));
        Assert.Equal(62, round.Readings[0].At.Angle.Degrees);
    }
}
