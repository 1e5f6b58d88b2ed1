using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
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

/// <summary>
/// What the oars' own sleeves do to a boat. By hand: 100 cm from the pin to the hands, 200 to the blade, the pin 80 from the
/// keel line, a peak of 1000 N, 55 to −35°. For a sine of pitch of 1 that rolls by 845.738 N m as the mean over the drive:
/// 500 (0.8 · 2/π + 2 m) with m the mean of sin πt cos(a − bt), π (cos a + cos(a − b))/(π² − b²) = 0.591090 for a of 55° and b of 90°.
/// </summary>
public class SleevesOnWaterTests
{
    // Simpson's rule is within a ten-thousandth.
    private const double OfSimpson = 1e-4;

    private static readonly SeatRig Rig = SeatRig.FromCentimetres(Rowing.Sweep, 80, 113, 342, 15);
    private static readonly OarFigure True = new(0, 0, []);
    private static readonly Station[] AllStations = [Station.Catch, Station.Abeam, Station.Finish];

    private static BoatBalance Balance(Func<GatePlace, OarFigure?> sleeves, BoatReadings? boat = null) => BoatBalance.Of(
        BoatCheck.Of(boat ?? Eight(), BoatContext.None, CheckSettings.Default),
        new SeatsOnWater(_ => MeasuredSeat.Typed(Rig) with { Assumed = SeatRig.Measures(Rowing.Sweep) }, sleeves),
        new DriveProfile("thousand", 1000),
        new Draws(new Random(5).NextDouble))!;

    private static BoatReadings Eight(Gauge? gauge = null, double shown = 4, params Reading[] also) => Boats.Boat("8+", [.. Enumerable.Range(1, 8).SelectMany(seat =>
        AllStations.Select(at => Boats.Read(Boats.Gate(seat), at, shown, gauge: gauge))), .. also]);

    private static Func<GatePlace, OarFigure?> At(int seat, OarFigure sleeve) => gate => gate.Seat == seat ? sleeve : True;

    /// <summary>
    /// Upright pins and 4° in all gates: the sleeve adds whole anywhere in the drive, so that the oar is lifted by sin 5° in
    /// place of sin 4°, 845.738 (0.0871557 − 0.0697565) = 14.715. A blade that is lifted more to port rolls the boat down to starboard.
    /// </summary>
    [Theory]
    [InlineData(2, 14.7152)]
    [InlineData(3, -14.7152)]
    public void Worked_by_hand(int seat, double roll)
    {
        BoatBalance balance = Balance(At(seat, new(1, 0, [])));

        Assert.Equal(roll, balance.MeanRoll.Value, 15 * OfSimpson);
        GateBalance turned = balance.Gates.Single(g => g.Gate.Seat == seat);
        Assert.Equal(Math.Sign(roll), Math.Sign(turned.Roll.Value));
        Assert.True(turned.FromMean.Value > 0);
        Assert.True(turned.Oar.IsSleeveRead);
    }

    /// <summary>1° of a sleeve is 845.738 cos 4° π/180 = 14.725 N m at its oar and in the boat.</summary>
    [Fact]
    public void A_sleeve_s_uncertainty_is_the_oar_s_and_the_boat_s()
    {
        BoatBalance sure = Balance(_ => True);
        BoatBalance unsure = Balance(At(4, new(0, 1, [])));

        Assert.Equal(14.7249, Apart(unsure.MeanRoll, sure.MeanRoll), 15 * OfSimpson);
        Assert.Equal(14.7249, Apart(unsure.Gates[3].Roll, sure.Gates[3].Roll), 15 * OfSimpson);

        static double Apart(LoadEstimate more, LoadEstimate less) => Math.Sqrt((more.U * more.U) - (less.U * less.U));
    }

    [Property(MaxTest = 10)]
    public Property The_same_sleeve_on_both_sides_leaves_the_roll_at_nothing() => Prop.ForAll(
        Gen.Choose(-500, 500).ToArbitrary(),
        hundredths =>
        {
            BoatBalance balance = Balance(_ => new(hundredths / 100.0, 0.2, []));

            // Sums of hundreds of newton metres that cancel but for rounding.
            return Math.Abs(balance.MeanRoll.Value) < 1e-6 && balance.Roll.All(p => Math.Abs(p.Roll.Value) < 1e-6);
        });

    /// <summary>All sleeves read on one boat share its level: it moves all blades alike.</summary>
    [Fact]
    public void What_all_sleeves_share_cancels_in_the_roll_and_between_seats()
    {
        BoatBalance sure = Balance(_ => True);
        BoatBalance unsure = Balance(_ => new(0, 0, [new("level/one", -1, 1)]));

        Assert.Equal(sure.MeanRoll.U, unsure.MeanRoll.U, 1e-6);
        Assert.Equal(sure.Gates[2].FromMean.U, unsure.Gates[2].FromMean.U, 1e-6);
        Assert.True(unsure.Gates[2].Handle.U > 2 * sure.Gates[2].Handle.U);
    }

    /// <summary>
    /// The zero of a gauge that read gates and sleeves is in both: it counts twice over, not as two errors. Of a gauge whose zero was
    /// checked the gates tell nothing more.
    /// </summary>
    [Fact]
    public void One_gauge_s_zero_in_gate_and_sleeve_adds_up()
    {
        Gauge gauge = Boats.UsualGauge with { Zero = GaugeZero.Assumed(Angle.FromDegrees(0.05)) };
        double same = Balance(_ => new(0, 0, [new("gauge/" + gauge.Name, -1, 0.05)]), Eight(gauge)).Gates[0].Handle.U;
        double another = Balance(_ => new(0, 0, [new("gauge/another", -1, 0.05)]), Eight(gauge)).Gates[0].Handle.U;

        Assert.True(same > another, $"{same} is not above {another}");
    }

    /// <summary>
    /// All gates read 1.5° above their target with one gauge: its zero is what explains that best, and it is in the sleeve that the
    /// gauge showed as well.
    /// </summary>
    [Fact]
    public void What_the_gates_tell_of_a_gauge_s_zero_is_taken_out_of_a_sleeve_that_it_read()
    {
        Gauge gauge = Boats.UsualGauge with { Zero = GaugeZero.Assumed(Angle.FromDegrees(0.2)) };
        var check = BoatCheck.Of(Eight(gauge, 5.5), BoatContext.None, CheckSettings.Default);
        double zero = check.Diagnosis!.Sum([], new StateShare(check.Diagnosis.Weights.Kernel.Model.Layout.Gauge(0), 1)).Mean;

        double sleeve = Balance(At(2, new(1, 0, [new("gauge/" + gauge.Name, -1, 0.2)])), Eight(gauge, 5.5)).Gates[1].Oar.Sleeve.Value.Degrees;

        Assert.Equal(1 - zero, sleeve, 1e-9);
        Assert.True(sleeve < 0.7, $"{sleeve}");
    }

    [Fact]
    public void An_oar_that_was_not_read_is_true_within_the_spread_of_oars()
    {
        OarOnWater oar = Balance(_ => null).Gates[0].Oar;

        // A true oar's 0.3° and 0.015 of a slipped one's 2°: √(0.09 + 0.06).
        Assert.False(oar.IsSleeveRead);
        Assert.Equal(0, oar.Sleeve.Value.Degrees);
        Assert.Equal(0.387298, oar.Sleeve.U.Degrees, 1e-6);
    }

    [Fact]
    public void A_sleeve_among_the_boat_s_readings_comes_before_the_oar_s_own()
    {
        Reading read = Boats.Read(Boats.Gate(2), Station.Abeam, 3) with { Item = ReadItem.Sleeve };

        GateBalance gate = Balance(At(2, new(-3, 0.1, [])), Eight(also: read)).Gates[1];

        Assert.True(gate.Oar.IsSleeveRead);
        Assert.InRange(gate.Oar.Sleeve.Value.Degrees, 1, 3);
        Assert.InRange(gate.Oar.Sleeve.U.Degrees, 0.1, 1.5);
        Assert.True(gate.FromMean.Value > 0);
    }

    /// <summary>All gates are at their targets: there is nothing that mending one could take away, and no draw says which.</summary>
    [Fact]
    public void Mending_a_gate_leaves_its_oar_s_sleeve()
    {
        BoatBalance turned = Balance(At(2, new(3, 0, [])));

        Assert.Equal(0, turned.Gates[1].RollOff.Value, 1e-6);
        Assert.True(turned.ForRoll.Now > 30, $"{turned.ForRoll.Now}");
        Assert.True(turned.ForRoll.Gates[0].Fall < 0.2 * turned.ForRoll.Now);
    }

    /// <summary>The draws have the spread that the law of propagation gives: what they leave of a boat true but for its sleeves.</summary>
    [Fact]
    public void Draws_turn_the_sleeves_as_far_as_they_may_be_off()
    {
        double known = Balance(_ => True).ForRoll.Now;
        double shared = Balance(_ => new(0, 0, [new("level/one", -1, 1)])).ForRoll.Now;
        double unknown = Balance(_ => new(0, 1, [])).ForRoll.Now;

        // What all share lifts both sides alike, so that the same draws of the gates roll it as much.
        Assert.Equal(known, shared, 0.15 * known);

        // √8 times 14.7 N m are 41.6; of a normal the mean size is 0.8 of its deviation, and a little more over the drive.
        Assert.InRange(unknown, 0.8 * 41.6, 1.3 * 41.6);
    }
}
