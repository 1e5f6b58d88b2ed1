using Gatewright.Core.Geometry;
using Gatewright.Core.Simulating;

namespace Gatewright.Core.Tests.Simulating;

/// <summary>Random numbers made from even ones. 100,000 draws: a share of a half is known to 0.0016, a mean to 0.0032 sd.</summary>
public sealed class DrawsTests
{
    private const int Many = 100_000;

    [Fact]
    public void Normal_draws_have_the_normal_shares_within_one_two_and_three_deviations()
    {
        Draws draws = SeededDraws.Of(1);
        double[] values = [.. Enumerable.Range(0, Many).Select(_ => draws.Normal(Angle.FromDegrees(2)).Degrees)];
        Assert.Equal(0, values.Average(), 0.03);
        Assert.Equal(4, values.Average(v => v * v), 0.08);

        // 68.27, 95.45 and 99.73 % (JCGM 100:2008, Table G.1 rounds them so).
        Assert.Equal(0.6827, values.Count(v => Math.Abs(v) < 2) / (double)Many, 0.006);
        Assert.Equal(0.9545, values.Count(v => Math.Abs(v) < 4) / (double)Many, 0.003);
        Assert.Equal(0.9973, values.Count(v => Math.Abs(v) < 6) / (double)Many, 0.001);
        Assert.Equal(0.5, values.Count(v => v < 0) / (double)Many, 0.006);
    }

    [Fact]
    public void The_even_number_0_makes_the_middle_and_never_an_infinity()
    {
        Assert.Equal(0, new Draws(() => 0).Normal(Angle.FromDegrees(1)).Degrees);
        Assert.True(double.IsFinite(new Draws(() => Math.BitDecrement(1.0)).Normal(Angle.FromDegrees(1)).Degrees));
    }

    [Fact]
    public void Each_of_several_is_as_likely()
    {
        Draws draws = SeededDraws.Of(2);
        Dictionary<string, int> counts = Enumerable.Range(0, Many)
            .Select(_ => draws.OneOf(["bow", "two", "three", "stroke"])).GroupBy(s => s).ToDictionary(g => g.Key, g => g.Count());
        Assert.Equal(4, counts.Count);
        Assert.All(counts.Values, count => Assert.Equal(0.25, count / (double)Many, 0.006));
    }

    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.3, 0.3)]
    [InlineData(1.0, 1.0)]
    public void What_has_a_probability_happens_that_often(double probability, double share)
    {
        Draws draws = SeededDraws.Of(3);
        Assert.Equal(share, Enumerable.Range(0, Many).Count(_ => draws.Happens(probability)) / (double)Many, 0.006);
    }

    [Fact]
    public void The_same_even_numbers_make_the_same_boat()
    {
        var plan = new BoatPlan(BoatClass.Parse("4x"));
        TrueBoat One() => BoatDraw.FromPrior(plan, SeededDraws.Of(5));
        Assert.Equal(One().Gates, One().Gates);
        Assert.Equal(One().Hull, One().Hull);
    }
}
