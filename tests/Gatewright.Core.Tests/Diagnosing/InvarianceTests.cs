using FsCheck.Xunit;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Simulating;
using Gatewright.Core.Tests.Simulating;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>What must not matter to a diagnosis. Tolerances are rounding's: sums run in another order.</summary>
public sealed class InvarianceTests
{
    private const double Rounding = 1e-9;

    [Property(MaxTest = 30)]
    public void The_order_of_readings_does_not_matter(int seed)
    {
        BoatReadings boat = AnyBoat(seed);
        Reading[] shuffled = [.. boat.Readings];
        new Random(seed).Shuffle(shuffled);
        AssertAlike(Boats.Diagnose(boat), Boats.Diagnose(boat with { Readings = shuffled }), gate => gate, roll: 1);
    }

    [Property(MaxTest = 30)]
    public void Port_and_starboard_exchanged_and_the_roll_turned_round_is_the_same_boat(int seed)
    {
        BoatReadings boat = AnyBoat(seed);
        Reading[] mirrored = [.. boat.Readings.Select(r => r with { Gate = Mirrored(r.Gate), Lie = Mirrored(r.Lie) })];
        AssertAlike(Boats.Diagnose(boat), Boats.Diagnose(boat with { Readings = mirrored }), Mirrored, roll: -1);
    }

    /// <summary>
    /// A level error changes sign when the boat is turned over, so a boat read inverted is one read upright on the opposite slope.
    /// </summary>
    [Property(MaxTest = 30)]
    public void A_boat_turned_over_on_the_opposite_slope_is_the_same_boat(int seed)
    {
        BoatReadings boat = AnyBoat(seed);
        Reading[] turned = [.. boat.Readings.Select(r => r with { Lie = TurnedOver(r.Lie) })];
        Diagnosis one = Boats.Diagnose(boat);
        Diagnosis other = Boats.Diagnose(boat with { Readings = turned });
        Assert.Equal(one.LogEvidence, other.LogEvidence, Rounding);
        Assert.All(one.Gates, gate => AssertSameGate(gate, other.At(gate.Gate)));
    }

    [Property(MaxTest = 30)]
    public void Seats_numbered_otherwise_are_the_same_gates(int seed)
    {
        BoatReadings boat = AnyBoat(seed);
        static GatePlace Renumbered(GatePlace gate) => gate with { Seat = 9 - gate.Seat };
        Reading[] readings = [.. boat.Readings.Select(r => r with { Gate = Renumbered(r.Gate) })];
        AssertAlike(Boats.Diagnose(boat), Boats.Diagnose(boat with { Readings = readings }), Renumbered, roll: 1);
    }

    [Property(MaxTest = 30)]
    public void What_is_told_of_each_gate_sums_to_certainty(int seed)
    {
        Diagnosis diagnosis = Boats.Diagnose(AnyBoat(seed));
        Assert.All(diagnosis.Gates, gate =>
        {
            Assert.Equal(1, gate.Causes.Sum(c => c.Probability), Rounding);
            Assert.Equal(gate.Wrong, diagnosis.Probability(part => part.Touches(gate.Gate)), Rounding);
            Assert.Equal(gate.Causes.OrderByDescending(c => c.Probability).First().Probability, gate.Causes[0].Probability, Rounding);
        });
    }

    [Property(MaxTest = 30)]
    public void Stories_are_told_most_likely_first_and_leave_out_little(int seed)
    {
        Diagnosis diagnosis = Boats.Diagnose(AnyBoat(seed));
        double[] told = [.. diagnosis.Stories.Select(s => s.Probability)];
        Assert.Equal(told.OrderDescending(), told);

        // What is left out is under 1 in 10,000 each.
        Assert.InRange(told.Sum(), 1 - (1e-4 * diagnosis.StoryCount), 1 + Rounding);
        Assert.All(told, p => Assert.True(p >= 1e-4));
    }

    /// <summary>Boats of several classes, lyings and stations, with whatever may be wrong with them.</summary>
    private static BoatReadings AnyBoat(int seed)
    {
        Draws draws = SeededDraws.Of(seed);
        var plan = new BoatPlan(draws.OneOf(BoatClass.All))
        {
            Lie = new(draws.OneOf([Lie.Upright, Lie.Inverted]), draws.OneOf<HullLevel>(
                [new HullLevel.Read(HullAttitude.FromDegrees(0.7, -0.4)), new HullLevel.ByEye(), new HullLevel.BubbleCentred()])),
            Stations = draws.OneOf<IReadOnlyList<Station>>([Stations.All, [Station.Catch, Station.Finish], [Station.Abeam]]),
        };
        return new Reader(BoatDraw.FromPrior(plan, draws), plan, draws).Round("boat");
    }

    private static GatePlace Mirrored(GatePlace gate) => gate with { Side = gate.Side.Opposite() };

    private static BoatLie Mirrored(BoatLie lie) => lie.Level is HullLevel.Read { Attitude: var read }
        ? lie with { Level = new HullLevel.Read(HullAttitude.FromDegrees(read.BowHigh.Degrees, -read.PortLow.Degrees)) }
        : lie;

    private static BoatLie TurnedOver(BoatLie lie) => new(
        lie.Lie == Lie.Upright ? Lie.Inverted : Lie.Upright,
        lie.Level is HullLevel.Read { Attitude: var read }
            ? new HullLevel.Read(HullAttitude.FromDegrees(-read.BowHigh.Degrees, -read.PortLow.Degrees))
            : lie.Level);

    private static void AssertAlike(Diagnosis one, Diagnosis other, Func<GatePlace, GatePlace> there, int roll)
    {
        Assert.Equal(one.StoryCount, other.StoryCount);
        Assert.Equal(one.LogEvidence, other.LogEvidence, Rounding);
        Assert.All(one.Gates, gate => AssertSameGate(gate, other.At(there(gate.Gate))));
        Assert.Equal(one.Levels[0].BowHigh.Value.Degrees, other.Levels[0].BowHigh.Value.Degrees, Rounding);
        Assert.Equal(one.Levels[0].PortLow.Value.Degrees, roll * other.Levels[0].PortLow.Value.Degrees, Rounding);
    }

    private static void AssertSameGate(GateDiagnosis one, GateDiagnosis other)
    {
        Assert.Equal(one.Causes.Count, other.Causes.Count);
        Assert.All(one.Causes, cause =>
            Assert.Equal(cause.Probability, other.Causes.Single(c => c.Cause == cause.Cause).Probability, Rounding));
        AssertSame(one.GatePitch, other.GatePitch);
        AssertSame(one.LeanAft, other.LeanAft);
        AssertSame(one.LeanOut, other.LeanOut);
    }

    private static void AssertSame(Estimate one, Estimate other)
    {
        Assert.Equal(one.Value.Degrees, other.Value.Degrees, Rounding);
        Assert.Equal(one.U.Degrees, other.U.Degrees, Rounding);
    }
}
