using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Judging;

public class DecisionRuleTests
{
    private static readonly DecisionRule Rule = DecisionRule.Default;

    [Fact]
    public void The_defaults_are_the_agreed_probabilities() =>
        Assert.Equal((0.8, 0.95, 0.5), (Rule.OutsideToAdjust, Rule.AboveFloorForGood, Rule.BelowFloorToStop));

    // Limits 3 and 5: on and inside is good however little is known; the last digit of a correction does not decide.
    [Theory]
    [InlineData(2.99, false)]
    [InlineData(2.999999998, false)]
    [InlineData(2.9999999995, true)]
    [InlineData(3, true)]
    [InlineData(3.01, true)]
    [InlineData(4, true)]
    [InlineData(4.99, true)]
    [InlineData(5, true)]
    [InlineData(5.0000000005, true)]
    [InlineData(5.000000002, false)]
    [InlineData(5.01, false)]
    public void A_limit_is_accepted_simply(double value, bool good)
    {
        foreach (double u in new[] { 0, 0.01, 0.4, 10 })
        {
            Assert.Equal(good, Rule.Limits(value, u, 3, 5).Verdict == Verdict.Good);
        }
    }

    // 80 % of the normal distribution lie below 0.8416212 standard deviations.
    [Theory]
    [InlineData(0.84162, Verdict.Unsure)]
    [InlineData(0.84163, Verdict.Adjust)]
    public void Outside_is_adjust_from_the_probability_on_that_the_rule_names(double deviations, Verdict verdict)
    {
        Assert.Equal(verdict, Rule.AtMost(Estimate.FromDegrees(5 + (0.3 * deviations), 0.3), Angle.FromDegrees(5)).Verdict);
        Assert.Equal(verdict, Rule.Limits(3 - (0.3 * deviations), 0.3, 3, 50).Verdict);
    }

    [Fact]
    public void Outside_counts_what_lies_beyond_either_limit()
    {
        // Limits two standard deviations to either side: 2 · 0.0227501 of the normal distribution.
        Close.To(0.0455003, Rule.Limits(4, 0.5, 3, 5).Outside, 5e-8);
    }

    // Below with so much probability: 0.5 and 1 − 0.95, one step either side.
    [Theory]
    [InlineData(1, Verdict.Stop)]
    [InlineData(0.50001, Verdict.Stop)]
    [InlineData(0.5, Verdict.Stop)]
    [InlineData(0.49999, Verdict.Unsure)]
    [InlineData(0.05001, Verdict.Unsure)]
    [InlineData(0.05, Verdict.Good)]
    [InlineData(0.04999, Verdict.Good)]
    [InlineData(0, Verdict.Good)]
    [InlineData(double.NaN, Verdict.Unsure)]
    public void A_floor_is_guarded(double below, Verdict verdict) => Assert.Equal(verdict, Rule.Floor(below));

    // 95 % of the normal distribution lie below 1.6448536 standard deviations.
    [Theory]
    [InlineData(1.64486, Verdict.Good)]
    [InlineData(1.64484, Verdict.Unsure)]
    [InlineData(0.00001, Verdict.Unsure)]
    [InlineData(0, Verdict.Stop)]
    [InlineData(-0.00001, Verdict.Stop)]
    public void A_reading_must_show_that_it_lies_above_the_floor(double deviations, Verdict verdict) =>
        Assert.Equal(verdict, Rule.Floor(DecisionRule.Below(Pitch.FromDegrees(2), 2 + (0.4 * deviations), 0.4)));

    [Property(MaxTest = 500)]
    public void Knowing_less_never_improves_the_verdict_on_a_floor(short hundredths, byte u, byte more)
    {
        double value = hundredths / 100.0;
        Verdict Of(double known) => Rule.Floor(DecisionRule.Below(Pitch.FromDegrees(2), value, known));

        Assert.True(Of((u + more) / 100.0) >= Of(u / 100.0));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(2.0000000005)]
    [InlineData(1.9999999995)]
    public void On_the_floor_it_is_even_odds_however_well_the_pitch_is_known(double value)
    {
        foreach (double u in new[] { 0, 1e-12, 0.4 })
        {
            Assert.Equal(0.5, DecisionRule.Below(Pitch.FromDegrees(2), value, u));
        }
    }

    [Fact]
    public void What_is_known_exactly_lies_where_it_lies()
    {
        Assert.Equal((Verdict.Adjust, 1.0), Rule.Limits(5.01, 0, 3, 5));
        Assert.Equal((Verdict.Adjust, 1.0), Rule.Limits(2.99, 0, 3, 5));
        Assert.Equal((Verdict.Good, 0.0), Rule.Limits(4, 0, 3, 5));
        Assert.Equal(1, DecisionRule.Below(Pitch.FromDegrees(2), 1.99, 0));
        Assert.Equal(0, DecisionRule.Below(Pitch.FromDegrees(2), 2.01, 0));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void What_is_no_uncertainty_is_refused(double u)
    {
        var limits = Assert.Throws<ArgumentOutOfRangeException>(() => Rule.Limits(4, u, 3, 5));

        Assert.StartsWith("A standard uncertainty must be 0 or more.", limits.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.Below(Pitch.FromDegrees(2), 2, u));
    }

    [Fact]
    public void A_value_that_is_no_number_is_never_good()
    {
        Assert.Equal(Verdict.Unsure, Rule.Limits(double.NaN, 0.3, 3, 5).Verdict);
        Assert.Equal(Verdict.Unsure, Rule.Floor(DecisionRule.Below(Pitch.FromDegrees(2), double.NaN, 0.3)));
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void What_is_no_probability_is_refused(double value)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new DecisionRule(value, 0.95, 0.5));

        Assert.StartsWith("A probability must be from 0 to 1.", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new DecisionRule(0.8, value, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DecisionRule(0.8, 0.95, value));
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.Default with { AboveFloorForGood = value });
    }
}
