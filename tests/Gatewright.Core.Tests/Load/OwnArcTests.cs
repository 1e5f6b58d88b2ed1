using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Load;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Core.Simulating;
using Gatewright.Core.Stroke;
using Gatewright.Core.Tests.Diagnosing;

namespace Gatewright.Core.Tests.Load;

/// <summary>Each seat's own arc in the balance of a boat.</summary>
public class OwnArcTests
{
    private static readonly SeatRig Usual = SeatRig.FromCentimetres(Rowing.Sweep, 85, 115, 375, 15);
    private static readonly SeatRig Narrow = SeatRig.FromCentimetres(Rowing.Sweep, 81, 115, 375, 15);
    private static readonly Station[] AllStations = [Station.Catch, Station.Abeam, Station.Finish];

    private static BoatBalance Balance(Func<int, MeasuredSeat> rigs, string boatClass = "8+") => BoatBalance.Of(
        BoatCheck.Of(Boat(boatClass), BoatContext.None, CheckSettings.Default),
        new SeatsOnWater(rigs, _ => new OarFigure(0, 0, [])),
        new DriveProfile("thousand", 1000),
        new Draws(new Random(5).NextDouble))!;

    private static BoatReadings Boat(string boatClass) => Boats.Boat(boatClass, [.. Enumerable.Range(1, BoatClass.Parse(boatClass).Seats)
        .SelectMany(seat => boatClass == "1x" ? [Boats.Port(seat), Boats.Starboard(seat)] : new[] { Boats.Gate(seat) })
        .SelectMany(gate => AllStations.Select(at => Boats.Read(gate, at, 4)))]);

    private static MeasuredSeat Unmeasured(SeatRig rig) => MeasuredSeat.Typed(rig) with { Assumed = SeatRig.Measures(rig.Rowing) };

    [Fact]
    public void A_measured_seat_goes_through_the_stroke_of_its_rig()
    {
        BoatBalance balance = Balance(seat => MeasuredSeat.Typed(seat == 3 ? Narrow : Usual));
        var stroke = MeasuredStroke.Of(MeasuredSeat.Typed(Narrow), Reach.Usual(Rowing.Sweep), OarPoints.Usual(Rowing.Sweep))!;

        OarOnWater oar = balance.Gates[2].Oar;
        Assert.True(oar.IsArcOwn);
        Assert.Equal(stroke[StrokeFigure.Catch].Value, oar.Catch.Value.Degrees, 1e-9);
        Assert.Equal(stroke[StrokeFigure.Catch].U, oar.Catch.U.Degrees, 1e-9);
        Assert.Equal(stroke[StrokeFigure.Finish].Value, oar.Finish.Value.Degrees, 1e-9);
        Assert.Equal(stroke[StrokeFigure.Finish].U, oar.Finish.U.Degrees, 1e-9);
        Assert.True(oar.Catch.Value > balance.Gates[0].Oar.Catch.Value);
    }

    /// <summary>
    /// The mean of sin πt cos(a − bt) over the drive is π (cos a + cos(a − b))/(π² − b²), a the catch and b the arc: so a seat's
    /// roll moment follows by hand from its ends. With 4° in every gate and 1000 N it is 1000 h/o sin 4° (S 2/π + o m).
    /// </summary>
    [Fact]
    public void A_seat_s_roll_follows_from_its_own_ends()
    {
        GateBalance gate = Balance(seat => MeasuredSeat.Typed(seat == 4 ? Narrow : Usual)).Gates[3];
        (double a, double b) = (
            double.DegreesToRadians(gate.Oar.Catch.Value.Degrees),
            double.DegreesToRadians(gate.Oar.Catch.Value.Degrees - gate.Oar.Finish.Value.Degrees));

        // 115 + 2 − 15 and 375 − 115 − 2 − 27 centimetres; sin 4° is 0.0697565.
        (double hands, double blade) = (1.02, 2.31);
        double mean = Math.PI * (Math.Cos(a) + Math.Cos(a - b)) / ((Math.PI * Math.PI) - (b * b));
        double roll = 1000 * hands / blade * 0.0697565 * ((0.81 * 2 / Math.PI) + (blade * mean));

        // Simpson's rule is within a ten-thousandth.
        Assert.Equal(roll, gate.Gate.Side.Sign() * gate.Roll.Value, 1e-4 * roll);
    }

    [Fact]
    public void One_seat_rigged_narrow_rolls_the_boat_and_one_on_either_side_does_not()
    {
        double one = Balance(seat => MeasuredSeat.Typed(seat == 2 ? Narrow : Usual)).MeanRoll.Value;
        BoatBalance both = Balance(seat => MeasuredSeat.Typed(seat is 2 or 5 ? Narrow : Usual));

        // Nearer to the keel line and with more of the arc towards the ends, the blade at port has the shorter lever.
        Assert.True(one < -0.1, $"{one}");
        Assert.Equal(0, both.MeanRoll.Value, 1e-6);
        Assert.All(both.Roll, point => Assert.Equal(0, point.Roll.Value, 1e-6));
    }

    [Fact]
    public void A_seat_of_which_nothing_was_measured_goes_through_the_stations_with_their_spread()
    {
        OarOnWater oar = Balance(_ => Unmeasured(Usual)).Gates[0].Oar;

        // 55 and −35, each held within 5° by eye: the settings' defaults. Differences by steps are exact for the angles themselves.
        Assert.False(oar.IsArcOwn);
        Assert.Equal((55.0, -35.0), (oar.Catch.Value.Degrees, oar.Finish.Value.Degrees));
        Assert.Equal(5, oar.Catch.U.Degrees, 1e-6);
        Assert.Equal(5, oar.Finish.U.Degrees, 1e-6);
    }

    /// <summary>A stretcher 150 cm past the pins is finished before abeam, one 250 cm past them not rowed at all.</summary>
    [Theory]
    [InlineData(150)]
    [InlineData(250)]
    public void A_rig_that_nobody_rows_so_falls_back_to_the_stations(double workThrough) => Assert.False(
        Balance(_ => MeasuredSeat.Typed(SeatRig.FromCentimetres(Rowing.Sweep, 85, 115, 375, workThrough))).Gates[0].Oar.IsArcOwn);

    /// <summary>What a rig is off by is the seat's, not the oar's: in a single scull it moves both blades, and the roll not at all.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_sculler_s_two_oars_share_rig_and_reach(bool isMeasured)
    {
        var rig = SeatRig.FromCentimetres(Rowing.Scull, 160, 88, 288, 15);
        RigMeasure[] assumed = isMeasured ? [] : SeatRig.Measures(Rowing.Scull);
        BoatBalance sure = Balance(_ => new(rig, Of(0), assumed), "1x");
        BoatBalance unsure = Balance(_ => new(rig, Of(9), assumed), "1x");

        Assert.Equal(sure.MeanRoll.U, unsure.MeanRoll.U, 1e-6);
        Assert.True(unsure.Gates[0].Roll.U > sure.Gates[0].Roll.U + 0.01);

        static CovarianceMatrix Of(double variance) =>
            new(4, [variance, 0, 0, 0, 0, variance, 0, 0, 0, 0, variance, 0, 0, 0, 0, variance]);
    }

    /// <summary>In sweep each seat is another's: what its rig is off by stays in the boat's roll.</summary>
    [Fact]
    public void In_sweep_the_seats_arcs_are_off_apart()
    {
        BoatBalance unmeasured = Balance(_ => Unmeasured(Usual));
        BoatBalance measured = Balance(_ => MeasuredSeat.Typed(Usual));

        // Eight seats, each off by itself by as much: the boat by √8 of it.
        double ofSeats = Math.Sqrt(unmeasured.Gates.Sum(g => g.Roll.U * g.Roll.U) - measured.Gates.Sum(g => g.Roll.U * g.Roll.U));
        double ofBoat = Math.Sqrt((unmeasured.MeanRoll.U * unmeasured.MeanRoll.U) - (measured.MeanRoll.U * measured.MeanRoll.U));
        Assert.True(ofSeats > 0.5, $"{ofSeats}");

        // The arcs' own mean levers enter the gates' part a little differently too.
        Assert.Equal(1, ofBoat / ofSeats, 0.25);
    }
}
