using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Load;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Core.Simulating;
using Gatewright.Core.Stroke;
using Gatewright.Core.Tests.Diagnosing;

namespace Gatewright.Core.Tests.Load;

public class BoatBalanceTests
{
    private static readonly SeatRig Rig = SeatRig.FromCentimetres(Rowing.Sweep, 84, 114, 375, 15);
    private static readonly Station[] AllStations = [Station.Catch, Station.Abeam, Station.Finish];

    // Oars known to be true, so that what is looked at comes of the gates.
    private static readonly SeatsOnWater Seats = new(_ => MeasuredSeat.Typed(Rig), _ => new OarFigure(0, 0, []));

    private static BoatBalance Balance(BoatReadings boat) => BoatBalance.Of(
        BoatCheck.Of(boat, BoatContext.None, CheckSettings.Default), Seats, DriveProfile.Men, new Draws(new Random(5).NextDouble))!;

    private static BoatReadings Eight(Func<int, Station, double> degrees, BoatLie? lie = null, Gauge? gauge = null) =>
        Boats.Boat("8+", [.. Enumerable.Range(1, 8).SelectMany(seat =>
            AllStations.Select(at => Boats.Read(Boats.Gate(seat), at, degrees(seat, at), lie, gauge)))]);

    [Fact]
    public void Both_sides_equal_do_not_roll_and_no_seat_differs()
    {
        BoatBalance balance = Balance(Eight((_, at) => at == Station.Finish ? 3.5 : 4));

        // Sums of hundreds of newton metres that cancel but for rounding.
        Assert.All(balance.Roll, point => Assert.Equal(0, point.Roll.Value, 1e-6));
        Assert.Equal(0, balance.MeanRoll.Value, 1e-6);
        Assert.All(balance.Gates, gate => Assert.Equal(0, gate.FromMean.Value, 1e-6));
        Assert.All(balance.Gates, gate => Assert.Equal(gate.Gate.Side.Sign(), Math.Sign(gate.Roll.Value)));
    }

    /// <summary>Less pitch at port lifts port less: the boat rolls down to port, which is negative; and the other way round.</summary>
    [Theory]
    [InlineData(2, -1)]
    [InlineData(3, 1)]
    public void A_low_gate_rolls_the_boat_down_to_its_own_side(int seat, int sign)
    {
        BoatBalance balance = Balance(Eight((s, _) => s == seat ? 2 : 4));

        Assert.Equal(sign, Math.Sign(balance.MeanRoll.Value));
        Assert.True(Math.Abs(balance.MeanRoll.Value) > 2 * balance.MeanRoll.U);
        GateBalance low = balance.Gates.Single(g => g.Gate.Seat == seat);
        Assert.True(low.FromMean.Value < -2 * low.FromMean.U);
        Assert.Equal(low.Gate, balance.ForRoll.Gates[0].Gate);
        Assert.Equal(low.Gate, balance.ForLoad.Gates[0].Gate);
        Assert.True(balance.ForRoll.Gates[0].Probability > 0.9);
        Assert.True(balance.ForRoll.Gates[0].Fall > 0);
    }

    [Fact]
    public void The_seats_rolls_sum_to_the_boat_s()
    {
        BoatBalance balance = Balance(Eight((seat, at) => 3 + (0.3 * seat) - (at == Station.Finish ? 1 : 0)));

        Assert.Equal(balance.MeanRoll.Value, balance.Gates.Sum(g => g.Roll.Value), 1e-9);
        Assert.Equal(0, balance.Gates.Sum(g => g.FromMean.Value), 1e-9);
    }

    /// <summary>
    /// Every gate reads with the gauge's zero: as many to port as to starboard, it lifts both sides alike. It stays in each
    /// handle's own load and leaves the difference of two.
    /// </summary>
    [Fact]
    public void A_gauge_s_zero_cancels_in_the_roll_and_between_seats()
    {
        BoatBalance sure = Balance(Eight((_, _) => 4, gauge: Boats.UsualGauge with { Zero = GaugeZero.Assumed(Angle.FromDegrees(0.01)) }));
        BoatBalance unsure = Balance(Eight((_, _) => 4, gauge: Boats.UsualGauge with { Zero = GaugeZero.Assumed(Angle.FromDegrees(0.3)) }));

        // What is left is the stories' weights, which the zero moves a little.
        Assert.Equal(1, unsure.MeanRoll.U / sure.MeanRoll.U, 0.05);
        Assert.Equal(1, unsure.Gates[3].FromMean.U / sure.Gates[3].FromMean.U, 0.05);
        Assert.True(unsure.Gates[3].Handle.U > 1.1 * sure.Gates[3].Handle.U);
    }

    /// <summary>
    /// A hull that lay rolled reads as lean out on one side and in on the other: in the roll that adds up. Eight gates that agree
    /// tell most of the level by themselves, so of 0.7° in place of 0.1 a seventh more remains.
    /// </summary>
    [Fact]
    public void A_level_by_eye_makes_the_roll_at_the_catch_uncertain()
    {
        BoatBalance read = Balance(Eight((_, _) => 4));
        BoatBalance byEye = Balance(Eight((_, _) => 4, new BoatLie(Lie.Upright, new HullLevel.ByEye())));

        Assert.True(byEye.Roll[3].Roll.U > 1.1 * read.Roll[3].Roll.U);
    }

    [Fact]
    public void Of_a_boat_not_read_whole_no_sum_is_told() => Assert.Null(BoatBalance.Of(
        BoatCheck.Of(Boats.Boat("8+", Boats.Read(Boats.Port(2), Station.Catch, 4)), BoatContext.None, CheckSettings.Default),
        Seats,
        DriveProfile.Men,
        new Draws(new Random(5).NextDouble)));

    /// <summary>
    /// The sum in one go against the covariance of each gate and the correlation that draws have: 20,000 of them tell a
    /// deviation within 0.5 %, and the tails of rare stories a little more.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Draws_have_the_means_and_deviations_of_the_sums(bool isReadThrough)
    {
        // Read abeam alone, a fault leaves wide open what it is: there the story's own width counts.
        Diagnosis diagnosis = Boats.Diagnose(isReadThrough
            ? Eight((seat, _) => seat == 4 ? 2.5 : 4)
            : Boats.Eight([Station.Abeam], (seat, _) => seat == 4 ? 1.5 : 4));
        GatePlace[] gates = [Boats.Gate(4), Boats.Gate(5)];
        GateShare[] shares = [new(gates[0], 1, 0.7, 0.5), new(gates[1], -1, -0.7, -0.5)];
        (double mean, double variance) = diagnosis.Sum(shares);
        int[] first = [.. gates.Select(g => 3 * diagnosis.Gates.Select(d => d.Gate).ToList().IndexOf(g))];

        double[] drawn = [.. new StateDraws(diagnosis.Weights, new Draws(new Random(7).NextDouble).StandardNormal).Take(20_000)
            .Select(x => Of(x, first[0]) - Of(x, first[1]))];

        double average = drawn.Average();
        Assert.Equal(mean, average, 4 * Math.Sqrt(variance / drawn.Length));
        Assert.Equal(1, Math.Sqrt(drawn.Sum(d => (d - average) * (d - average)) / drawn.Length / variance), 0.03);

        static double Of(double[] state, int at) => state[at] + (0.7 * state[at + 1]) + (0.5 * state[at + 2]);
    }
}
