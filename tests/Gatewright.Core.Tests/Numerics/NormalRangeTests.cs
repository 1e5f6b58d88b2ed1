using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Numerics;

public class NormalRangeTests
{
    /// <remarks>Studentised range, 95 % points for infinite degrees of freedom, to the second decimal; from memory.</remarks>
    [Theory]
    [InlineData(2, 2.77)]
    [InlineData(3, 3.31)]
    [InlineData(4, 3.63)]
    [InlineData(5, 3.86)]
    [InlineData(6, 4.03)]
    public void Its_95_percent_points_are_those_of_the_table(int count, double point) =>
        Assert.Equal(point, NormalRange.Quantile(0.95, count), 0.005);

    /// <remarks>The difference of two has a deviation of √2: 2 Φ(w/√2) − 1. Simpson's rule is far within 1e-9 there.</remarks>
    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(5)]
    public void Of_two_it_is_the_size_of_their_difference(double width) =>
        Assert.Equal((2 * Normal.Cdf(width / Math.Sqrt(2))) - 1, NormalRange.Cdf(width, 2), 1e-9);

    [Fact]
    public void What_is_kept_ready_is_what_is_worked_out() => Assert.All(
        Enumerable.Range(2, 24), count => Assert.Equal(NormalRange.Quantile(0.95, count), NormalRange.Within95(count), 2e-9));

    [Fact]
    public void One_number_has_no_range() => Assert.Throws<ArgumentOutOfRangeException>(() => NormalRange.Cdf(1, 1));
}
