using FsCheck.Xunit;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>What a club's own finished jobs make of the prior chances.</summary>
public sealed class PriorChancesTests
{
    /// <summary>Worked by hand from (n₀ p + k) / (n₀ + n).</summary>
    [Fact]
    public void Six_wrong_inserts_and_two_riggers_in_two_hundred_gates()
    {
        PriorChances after = PriorChances.Default.After(new() { GatesChecked = 200, GatePitch = 6, Rigger = 2 });
        Assert.Equal(12.0 / 600, after.GatePitch, 1e-15);
        Assert.Equal(6.0 / 600, after.PinAft, 1e-15);
        Assert.Equal(6.0 / 600, after.PinOut, 1e-15);
        Assert.Equal(8.0 / 600, after.Rigger, 1e-15);
        Assert.Equal(600, after.GatesBehind);
        Assert.Equal((0.015, 0.03, 0.02, 0.05), (after.Sleeve, after.HullLevel, after.GaugeZero, after.WrongSeat));
    }

    [Fact]
    public void Oars_boats_and_gauges_learn_from_their_own_checks()
    {
        PriorChances after = PriorChances.Default.After(new()
        {
            OarsChecked = 100,
            Sleeve = 4,
            BoatsChecked = 20,
            HullLevel = 3,
            GaugesChecked = 2,
            GaugeZero = 1,
        });
        Assert.Equal(10.0 / 500, after.Sleeve, 1e-15);
        Assert.Equal(6.0 / 120, after.HullLevel, 1e-15);
        Assert.Equal(2.0 / 52, after.GaugeZero, 1e-15);
        Assert.Equal(PriorChances.Default.GatePitch, after.GatePitch);
    }

    [Fact]
    public void Without_jobs_nothing_changes() => Assert.Equal(PriorChances.Default, PriorChances.Default.After(FoundCauses.None));

    [Fact]
    public void A_long_record_outweighs_what_was_thought_before()
    {
        PriorChances after = PriorChances.Default.After(new() { GatesChecked = 1_000_000, PinOut = 50_000 });
        Assert.Equal(0.05, after.PinOut, 1e-4);
        Assert.Equal(0, after.PinAft, 1e-4);
    }

    [Property]
    public void The_order_of_jobs_does_not_matter(byte a, byte b, byte c, byte d, byte e)
    {
        (FoundCauses one, FoundCauses other) = (Found(a, b, c), Found(d, e, a));
        AssertClose(PriorChances.Default.After(one).After(other), PriorChances.Default.After(other).After(one));
        AssertClose(PriorChances.Default.After(one).After(other), PriorChances.Default.After(one + other));
    }

    [Property]
    public void A_gates_chances_stay_above_nothing_and_together_below_certainty(byte a, byte b, byte c)
    {
        PriorChances after = PriorChances.Default.After(Found(a, b, c));
        double[] gate = [after.GatePitch, after.PinAft, after.PinOut, after.Rigger];
        Assert.All(gate, chance => Assert.True(chance > 0));
        Assert.True(gate.Sum() < 1);
        Assert.All(Causes.All, cause => Assert.True(double.IsFinite(after.LogOdds(cause)), cause.Code()));
    }

    /// <summary>What was found more often than expected becomes more likely, what was looked for and not found less.</summary>
    [Property]
    public void A_chance_moves_towards_what_was_found(byte gates, byte found)
    {
        FoundCauses jobs = new() { GatesChecked = gates + found, PinAft = found };
        double share = jobs.GatesChecked == 0 ? 0.015 : (double)found / jobs.GatesChecked;
        double after = PriorChances.Default.After(jobs).PinAft;
        Assert.InRange(after, Math.Min(share, 0.015) - 1e-15, Math.Max(share, 0.015) + 1e-15);
    }

    [Fact]
    public void Learnt_chances_are_what_the_diagnosis_starts_from()
    {
        BoatReadings boat = Boats.Eight(Stations.All, (seat, _) => seat == 4 ? 3 : 4);
        DiagnosingSettings learnt = DiagnosingSettings.Default with
        {
            Chances = PriorChances.Default.After(new() { GatesChecked = 400, GatePitch = 40 }),
        };
        Assert.True(Boats.Diagnose(boat, settings: learnt).Of(Cause.GatePitch, Boats.Gate(4))
            > Boats.Diagnose(boat).Of(Cause.GatePitch, Boats.Gate(4)));
    }

    [Fact]
    public void More_found_than_checked_is_refused()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(
            () => PriorChances.Default.After(new() { GatesChecked = 3, PinAft = 4, PinOut = 2 }));
        Assert.Equal("4 gates found with a cause among 3 checked.", error.Message);
        Assert.Throws<ArgumentException>(() => PriorChances.Default.After(new() { BoatsChecked = 1, HullLevel = 2 }));
        Assert.Throws<ArgumentException>(() => PriorChances.Default.After(new() { Sleeve = 1 }));
        Assert.Throws<ArgumentException>(() => PriorChances.Default.After(new() { GaugeZero = 1 }));
    }

    [Fact]
    public void A_count_below_nothing_is_refused()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(
            () => PriorChances.Default.After(new() { GatesChecked = 3, PinAft = -1 }));
        Assert.Equal("-1 gates found with a cause: a count is 0 or more.", error.Message);
        Assert.Throws<ArgumentException>(() => PriorChances.Default.After(new() { OarsChecked = -1 }));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Chances_of_no_weight_are_refused(double behind) => Assert.Throws<ArgumentException>(
        () => (PriorChances.Default with { GatesBehind = behind }).After(FoundCauses.None));

    private static FoundCauses Found(byte a, byte b, byte c) => new()
    {
        GatesChecked = a + b + (4 * c),
        GatePitch = a,
        PinAft = b,
        PinOut = c,
        Rigger = c,
        OarsChecked = a + c,
        Sleeve = c,
        BoatsChecked = a + b,
        HullLevel = b,
        GaugesChecked = c + 1,
        GaugeZero = 1,
    };

    private static void AssertClose(PriorChances one, PriorChances other)
    {
        Assert.All(Causes.All, cause => Assert.Equal(one.Of(cause), other.Of(cause), 1e-12));
        Assert.Equal(
            (one.GatesBehind, one.OarsBehind, one.BoatsBehind, one.GaugesBehind),
            (other.GatesBehind, other.OarsBehind, other.BoatsBehind, other.GaugesBehind));
    }
}
