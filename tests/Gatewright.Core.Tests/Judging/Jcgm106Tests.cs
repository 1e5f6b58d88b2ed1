using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Judging;

/// <summary>
/// Conformance probabilities of JCGM 106:2012, from memory, and recomputed to five decimals. What is a temperature or a
/// voltage there is a number of degrees here: the rule asks for nothing else.
/// </summary>
public class Jcgm106Tests
{
    [Fact]
    public void Below_an_upper_limit()
    {
        (_, double outside) = DecisionRule.Default.Limits(-5.47, 0.05, double.NegativeInfinity, -5.40);

        Close.To(0.92, 1 - outside, 0.005);
        Close.To(0.91924, 1 - outside, 0.000005);
    }

    [Fact]
    public void Above_a_lower_limit()
    {
        double above = 1 - DecisionRule.Below(Pitch.FromDegrees(490), 507.6, 8.6);

        Close.To(0.98, above, 0.005);
        Close.To(0.97965, above, 0.000005);
    }

    [Fact]
    public void Inside_two_limits()
    {
        (_, double outside) = DecisionRule.Default.Limits(13.6, 1.8, 12.5, 16.3);

        Close.To(0.66, 1 - outside, 0.005);
        Close.To(0.66263, 1 - outside, 0.000005);
    }

    /// <summary>Law enforcement: a limit of 100, a speed known to 2 %, 99.9 % sure of it being above: act from 107.</summary>
    [Fact]
    public void A_guarded_limit_is_acted_on_from_where_one_is_sure()
    {
        var rule = new DecisionRule(OutsideToAdjust: 0.8, AboveFloorForGood: 0.999, BelowFloorToStop: 0.5);
        Verdict At(double speed) => rule.Floor(DecisionRule.Below(Pitch.FromDegrees(100), speed, 0.02 * speed));

        Assert.Equal(Verdict.Unsure, At(106));
        Assert.Equal(Verdict.Good, At(107));
        Assert.Equal(Verdict.Unsure, At(106.586));
        Assert.Equal(Verdict.Good, At(106.588));
    }

    /// <summary>
    /// A process N(1500, 0.12²), measured with u 0.04, tolerance 1499.8 to 1500.2: what is made conforms with 0.904419;
    /// the consumer's risk is 0.0098783 and the producer's 0.0690265 with acceptance from 1499.82 to 1500.18, 0.0189422
    /// and 0.0372078 with acceptance at the tolerance. By quadrature over our own normal distribution.
    /// </summary>
    [Theory]
    [InlineData(0.18, 0.0098783, 0.0690265)]
    [InlineData(0.20, 0.0189422, 0.0372078)]
    public void The_risks_of_consumer_and_producer(double accepted, double consumer, double producer)
    {
        const double tolerance = 0.2;
        const double process = 0.12;
        const double u = 0.04;
        double Made(double x) => Normal.Density(x / process) / process;
        double Accepted(double x) => Normal.Cdf((accepted - x) / u) - Normal.Cdf((-accepted - x) / u);

        Close.To(0.904419, Integral(Made, -tolerance, tolerance), 5e-7, "conforms");
        Close.To(consumer, 2 * Integral(x => Made(x) * Accepted(x), tolerance, 1), 5e-8, "consumer");
        Close.To(producer, Integral(x => Made(x) * (1 - Accepted(x)), -tolerance, tolerance), 5e-8, "producer");
    }

    /// <summary>Simpson's rule in 2000 steps: far below the seven figures that are asked for.</summary>
    private static double Integral(Func<double, double> f, double from, double to)
    {
        const int steps = 2000;
        double h = (to - from) / steps;
        double sum = f(from) + f(to);
        for (int i = 1; i < steps; i++)
        {
            sum += (i % 2 == 1 ? 4 : 2) * f(from + (i * h));
        }

        return sum * h / 3;
    }
}
