using FsCheck.Xunit;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

public class GaussianMixtureTests
{
    [Fact]
    public void One_component_is_the_normal_itself()
    {
        var one = new GaussianMixture([7], [4], [0.5]);

        Assert.Equal((4.0, 0.5), (one.Mean, one.Sd));

        // Φ(1.644854) = 0.95: the one-sided 95 % point of the normal distribution, to seven figures.
        Close.To(0.05, one.Above(4 + (0.5 * 1.644854)), 1e-7);
    }

    [Fact]
    public void The_spread_holds_what_varies_within_and_between()
    {
        // By hand: mean 0.75·4 + 0.25·0 = 3; variance 0.75·(0.16 + 1) + 0.25·(0.36 + 9) = 3.21.
        var mixture = new GaussianMixture([3, 1], [4, 0], [0.4, 0.6]);

        Close.To(3, mixture.Mean, 1e-15);
        Close.To(Math.Sqrt(3.21), mixture.Sd, 1e-15);
    }

    [Fact]
    public void The_tail_is_that_of_the_parts_and_not_of_one_normal_as_wide()
    {
        // Nine in ten healthy at 4, one in ten at 0: a tenth lies below 2, where one normal as wide has 8.9 %.
        var mixture = new GaussianMixture([0.9, 0.1], [4, 0], [0.1, 0.1]);

        Close.To(0.9, mixture.Above(2), 1e-15);
        Close.To(0.9, mixture.Above(3), 1e-15);
        Assert.InRange(Normal.Cdf((3 - mixture.Mean) / mixture.Sd), 0.29, 0.32);
    }

    [Fact]
    public void A_component_known_exactly_lies_where_it_lies()
    {
        var exact = new GaussianMixture([1], [3], [0]);

        Assert.Equal((1.0, 0.5, 0.0), (exact.Above(2.9), exact.Above(3), exact.Above(3.1)));
    }

    [Property]
    public void Above_and_below_share_out_the_whole(byte share, sbyte mean, byte spread)
    {
        double weight = (share + 1) / 257.0;
        double sd = (spread + 1) / 100.0;
        var mixture = new GaussianMixture([weight, 1 - weight], [mean / 20.0, 4], [sd, 0.3]);
        var mirrored = new GaussianMixture([weight, 1 - weight], [-mean / 20.0, -4], [sd, 0.3]);

        Close.To(1, mixture.Above(2) + mirrored.Above(-2), 1e-14);
    }

    [Fact]
    public void Lengths_that_differ_and_no_weight_at_all_are_refused()
    {
        const string message = "A mixture needs as many means and deviations as weights, and some weight. (Parameter 'weights')";

        Assert.Equal(message, Assert.Throws<ArgumentException>(() => new GaussianMixture([], [], [])).Message);
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => new GaussianMixture([1], [1, 2], [1])).Message);
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => new GaussianMixture([1], [1], [1, 2])).Message);
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => new GaussianMixture([0, 0], [1, 2], [1, 1])).Message);
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => new GaussianMixture([double.NaN], [1], [1])).Message);
    }

    [Theory]
    [InlineData(-1, 4, 1)]
    [InlineData(1, 4, -1)]
    [InlineData(1, double.NaN, 1)]
    [InlineData(1, 4, double.NaN)]
    [InlineData(1, double.PositiveInfinity, 1)]
    [InlineData(1, 4, double.PositiveInfinity)]
    public void A_component_that_is_no_normal_is_refused(double weight, double mean, double sd)
    {
        var error = Assert.Throws<ArgumentException>(() => new GaussianMixture([2, weight], [4, mean], [1, sd]));

        Assert.StartsWith("Component 1 has weight ", error.Message, StringComparison.Ordinal);
        Assert.EndsWith("all must be finite, weight and deviation 0 or more.", error.Message, StringComparison.Ordinal);
    }
}
