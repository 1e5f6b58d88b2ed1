using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Load;
using Gatewright.Core.Oars;
using Gatewright.Core.Simulating;
using Gatewright.Core.Stroke;
using Gatewright.Core.Tests.Diagnosing;

namespace Gatewright.Core.Tests.Load;

/// <summary>A balance with another pull: scaled, it is what working it out anew gives.</summary>
public class AnotherPullTests
{
    // Sums of some hundred newton metres, each rounded to a part in 10^16, of which the difference of two sides is left: a part in
    // 10^9 of the peak is far above that, and far below any figure that is told.
    private const double OfThePeak = 1e-9;

    private static readonly Station[] AllStations = [Station.Catch, Station.Abeam, Station.Finish];

    private static BoatBalance Balance(int[] tenths, DriveProfile pull) => BoatBalance.Of(
        BoatCheck.Of(
            Boats.Boat("4-", [.. Enumerable.Range(1, 4).SelectMany(seat =>
                AllStations.Select(at => Boats.Read(Boats.Gate(seat), at, 4 + (tenths[seat - 1] / 10.0))))]),
            BoatContext.None,
            CheckSettings.Default),
        new SeatsOnWater(
            seat => MeasuredSeat.Typed(SeatRig.FromCentimetres(Rowing.Sweep, 84 + (tenths[seat + 7] / 20.0), 114, 375, 15)),
            gate => gate.Seat == 3 ? null : new OarFigure(tenths[gate.Seat + 3] / 10.0, 0.2, [])),
        pull,
        new Draws(new Random(3).NextDouble))!;

    [Property(MaxTest = 12)]
    public Property Scaling_is_working_it_out_anew() => Prop.ForAll(
        Gen.Choose(-20, 20).ArrayOf(12).Zip(Gen.Choose(200, 2000).Zip(Gen.Choose(200, 2000))).ToArbitrary(),
        one =>
        {
            (int[] tenths, (int from, int to)) = one;
            var pull = new DriveProfile("another", to);

            AssertSame(Balance(tenths, pull), Balance(tenths, new("one", from)).With(pull), OfThePeak * to);
        });

    /// <summary>Of twice the pull the loads are twice as much; degrees, chances and the order are what they were.</summary>
    [Fact]
    public void Only_forces_and_moments_go_with_the_pull()
    {
        BoatBalance once = Balance([-10, 3, 8, 0, 12, -4, 0, 7, 0, 5, -9, 3], new("once", 500));
        BoatBalance twice = once.With(new("twice", 1000));

        // A factor of two is exact.
        Assert.Equal("twice", twice.Profile.Name);
        Assert.Equal(2 * once.MeanRoll.Value, twice.MeanRoll.Value);
        Assert.Equal(2 * once.MeanRoll.U, twice.MeanRoll.U);
        Assert.Equal(once.Roll.Select(p => (p.At, 2 * p.Roll.Value, 2 * p.Roll.U)), twice.Roll.Select(p => (p.At, p.Roll.Value, p.Roll.U)));
        foreach ((GateBalance less, GateBalance more) in once.Gates.Zip(twice.Gates))
        {
            Assert.Equal((less.Gate, less.Oar), (more.Gate, more.Oar));
            Assert.Equal(
                Loads(less).Select(l => (2 * l.Value, 2 * l.U)),
                Loads(more).Select(l => (l.Value, l.U)));
        }

        foreach ((MendFirst less, MendFirst more) in new[] { (once.ForRoll, twice.ForRoll), (once.ForLoad, twice.ForLoad) })
        {
            Assert.Equal((2 * less.Now, less.None), (more.Now, more.None));
            Assert.Equal(less.Gates.Select(g => (g.Gate, 2 * g.Fall, g.Probability)), more.Gates.Select(g => (g.Gate, g.Fall, g.Probability)));
            Assert.Equal(
                less.Sleeves.Select(s => (s.Gate, s.ToBow, 2 * s.Fall, s.Probability)),
                more.Sleeves.Select(s => (s.Gate, s.ToBow, s.Fall, s.Probability)));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_pull_is_above_nothing_and_finite(double newtons) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new DriveProfile("none", newtons));

    private static void AssertSame(BoatBalance anew, BoatBalance scaled, double tolerance)
    {
        Assert.Equal(anew.Profile, scaled.Profile);
        Close(anew.MeanRoll, scaled.MeanRoll, tolerance);
        foreach ((RollPoint one, RollPoint other) in anew.Roll.Zip(scaled.Roll))
        {
            Assert.Equal(one.At, other.At);
            Close(one.Roll, other.Roll, tolerance);
        }

        foreach ((GateBalance one, GateBalance other) in anew.Gates.Zip(scaled.Gates))
        {
            Assert.Equal((one.Gate, one.Oar), (other.Gate, other.Oar));
            foreach ((LoadEstimate of, LoadEstimate than) in Loads(one).Zip(Loads(other)))
            {
                Close(of, than, tolerance);
            }
        }

        AssertSame(anew.ForRoll, scaled.ForRoll, tolerance);
        AssertSame(anew.ForLoad, scaled.ForLoad, tolerance);
    }

    private static void AssertSame(MendFirst anew, MendFirst scaled, double tolerance)
    {
        Assert.Equal(anew.None, scaled.None);
        Assert.Equal(anew.Now, scaled.Now, tolerance);
        Assert.Equal(anew.Gates.Select(g => (g.Gate, g.Probability)), scaled.Gates.Select(g => (g.Gate, g.Probability)));
        Assert.Equal(anew.Sleeves.Select(s => (s.Gate, s.Oar, s.ToBow, s.Probability)), scaled.Sleeves.Select(s => (s.Gate, s.Oar, s.ToBow, s.Probability)));
        double[] falls = [.. anew.Gates.Select(g => g.Fall), .. anew.Sleeves.Select(s => s.Fall)];
        Assert.All(
            falls.Zip(scaled.Gates.Select(g => g.Fall).Concat(scaled.Sleeves.Select(s => s.Fall))),
            fall => Assert.Equal(fall.First, fall.Second, tolerance));
    }

    private static LoadEstimate[] Loads(GateBalance gate) => [gate.Handle, gate.FromMean, gate.Roll, gate.RollOff];

    private static void Close(LoadEstimate one, LoadEstimate other, double tolerance)
    {
        Assert.Equal(one.Value, other.Value, tolerance);
        Assert.Equal(one.U, other.U, tolerance);
    }
}
