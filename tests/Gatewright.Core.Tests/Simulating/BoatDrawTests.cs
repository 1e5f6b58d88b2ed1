using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Simulating;

namespace Gatewright.Core.Tests.Simulating;

/// <summary>That simulated boats are what the model of the diagnosis believes of real ones.</summary>
public sealed class BoatDrawTests
{
    private static readonly BoatPlan Eight = new(BoatClass.Parse("8+"));

    [Fact]
    public void An_eight_is_rigged_with_stroke_on_port() => Assert.Equal(
        [
            "seat 1 starboard", "seat 2 port", "seat 3 starboard", "seat 4 port",
            "seat 5 starboard", "seat 6 port", "seat 7 starboard", "seat 8 port",
        ],
        Eight.Gates.Select(g => g.ToString()));

    [Fact]
    public void A_sculler_has_a_gate_on_each_side_of_each_seat() => Assert.Equal(
        ["seat 1 port", "seat 1 starboard", "seat 2 port", "seat 2 starboard"],
        new BoatPlan(BoatClass.Parse("2x")).Gates.Select(g => g.ToString()));

    /// <summary>
    /// Every story as often as its odds: with q = 0.015/0.985 for a gate's cause, h = 0.03/0.97 and z = 0.02/0.98, an eight's 548 have
    /// 1 + 32 q + 448 q² + (h + z)(1 + 32 q) + h z in all.
    /// </summary>
    [Fact]
    public void Stories_are_drawn_as_often_as_their_prior_odds()
    {
        const int Many = 40_000;
        const double Gate = 0.015 / 0.985;
        const double Hull = 0.03 / 0.97;
        const double Zero = 0.02 / 0.98;
        double total = 1 + (32 * Gate) + (448 * Gate * Gate) + ((Hull + Zero) * (1 + (32 * Gate))) + (Hull * Zero);
        Draws draws = SeededDraws.Of(1);
        List<TrueBoat> boats = [.. Enumerable.Range(0, Many).Select(_ => BoatDraw.FromPrior(Eight, draws))];

        // Shares of 40,000 boats: three standard errors are at most 0.0075.
        AssertShare(1 / total, boat => boat.Wrong.Count == 0);
        AssertShare(32 * Gate / total, boat => boat.Wrong is [{ Gate: not null }]);
        AssertShare(448 * Gate * Gate / total, boat => boat.Wrong is [{ Gate: not null }, { Gate: not null }]);
        AssertShare(Hull * (1 + (32 * Gate) + Zero) / total, boat => boat.Wrong.Any(p => p.Cause == Cause.HullLevel));
        AssertShare(Zero * (1 + (32 * Gate) + Hull) / total, boat => boat.Wrong.Any(p => p.Cause == Cause.GaugeZero));
        Assert.All(boats, boat => Assert.True(boat.Wrong.Count <= 2));
        Assert.DoesNotContain(boats, boat => boat.Wrong is [{ Gate: { } one }, { Gate: { } other }] && one == other);

        void AssertShare(double expected, Func<TrueBoat, bool> isIt) => Assert.Equal(expected, boats.Count(isIt) / (double)Many, 0.0075);
    }

    [Theory]
    [InlineData(null, 0.3, 0.3, 0.3)]
    [InlineData(Cause.GatePitch, 2.022, 0.3, 0.3)]
    [InlineData(Cause.PinAft, 0.3, 2.518, 0.3)]
    [InlineData(Cause.PinOut, 0.3, 0.3, 2.518)]
    [InlineData(Cause.Rigger, 0.3, 2.518, 2.518)]
    public void A_cause_opens_its_unknowns_by_its_spread_in_quadrature(Cause? cause, double pitch, double aft, double @out)
    {
        const int Many = 5000;
        GatePlace gate = new(4, Side.Port);
        CausePart[] wrong = cause is { } c ? [new(c, gate)] : [];
        Draws draws = SeededDraws.Of(2);
        List<GateState> states = [.. Enumerable.Range(0, Many).Select(_ => BoatDraw.With(Eight, wrong, draws).Gates[gate])];

        // A standard deviation from 5,000 draws is known to 1 %: three times that.
        Assert.Equal(1, Sd(states.Select(s => s.GatePitch.Degrees - 4)) / pitch, 0.03);
        Assert.Equal(1, Sd(states.Select(s => s.Pin.Aft.Degrees)) / aft, 0.03);
        Assert.Equal(1, Sd(states.Select(s => s.Pin.Out.Degrees)) / @out, 0.03);
    }

    [Fact]
    public void What_the_boat_shares_is_drawn_about_what_is_said_of_it()
    {
        const int Many = 5000;
        BoatPlan plan = Eight with
        {
            Lie = new(Lie.Upright, new HullLevel.Read(HullAttitude.FromDegrees(1, -0.5))),
            Gauge = MeasuringSettings.Default.GaugeNamed("gauge") with { Zero = GaugeZero.Assumed(Angle.FromDegrees(0.3)) },
        };
        Draws draws = SeededDraws.Of(3);
        List<TrueBoat> boats = Drawn();
        List<TrueBoat> tipped = Drawn(new CausePart(Cause.HullLevel));
        List<TrueBoat> knocked = Drawn(new CausePart(Cause.GaugeZero, Gauge: "gauge"));
        Assert.Equal(1, Sd(boats.Select(b => b.Hull.BowHigh.Degrees - 1)) / 0.1, 0.03);
        Assert.Equal(1, Sd(boats.Select(b => b.Hull.PortLow.Degrees + 0.5)) / 0.1, 0.03);
        Assert.Equal(1, Sd(boats.Select(b => b.GaugeZero.Degrees)) / 0.3, 0.03);
        Assert.Equal(1, Sd(tipped.Select(b => b.Hull.PortLow.Degrees + 0.5)) / 2.0025, 0.03);
        Assert.Equal(1, Sd(knocked.Select(b => b.GaugeZero.Degrees)) / 1.5297, 0.03);

        List<TrueBoat> Drawn(params CausePart[] wrong) => [.. Enumerable.Range(0, Many).Select(_ => BoatDraw.With(plan, wrong, draws))];
    }

    [Fact]
    public void A_slipped_sleeve_is_thrown_by_its_own_spread()
    {
        GatePlace oar = new(4, Side.Port);
        Draws draws = SeededDraws.Of(4);
        List<TrueBoat> boats = [.. Enumerable.Range(0, 5000).Select(_ => BoatDraw.With(Eight, [new(Cause.Sleeve, oar)], draws))];
        Assert.Equal(1, Sd(boats.Select(b => b.Sleeves[oar].Degrees)) / 2.022, 0.03);
        Assert.Equal(1, Sd(boats.Select(b => b.Sleeves[new(6, Side.Port)].Degrees)) / 0.3, 0.03);
    }

    [Fact]
    public void A_faulty_gate_is_far_enough_out_to_matter_and_any_gate_and_cause_alike()
    {
        const int Many = 4000;
        Draws draws = SeededDraws.Of(5);
        List<TrueBoat> boats = [.. Enumerable.Range(0, Many).Select(_ => BoatDraw.WithFaultyGate(Eight, draws, Angle.FromDegrees(1.5)))];
        Assert.All(boats, boat =>
        {
            GateState gate = boat.Gates[Assert.Single(boat.Wrong).Gate!.Value];
            Assert.True(Math.Abs(gate.GatePitch.Degrees - 4) + Math.Abs(gate.Pin.Aft.Degrees) + Math.Abs(gate.Pin.Out.Degrees) > 1.5);
        });
        Assert.All(BoatDraw.GateCauses, cause => Assert.Equal(0.25, boats.Count(b => b.Wrong[0].Cause == cause) / (double)Many, 0.021));
        Assert.All(Eight.Gates, gate => Assert.Equal(0.125, boats.Count(b => b.Wrong[0].Gate == gate) / (double)Many, 0.016));
    }

    [Fact]
    public void A_rigger_on_anothers_place_is_not_drawn()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(
            () => BoatDraw.With(Eight, [new(Cause.WrongSeat, new(2, Side.Port), new GatePlace(4, Side.Port))], SeededDraws.Of(1)));
        Assert.StartsWith("wrong-seat between seat 2 port and seat 4 port has no spread to draw from.", error.Message, StringComparison.Ordinal);
    }

    private static double Sd(IEnumerable<double> off) => Math.Sqrt(off.Average(x => x * x));
}
