using FsCheck.Xunit;
using Gatewright.Core.Mending;

namespace Gatewright.Core.Tests.Mending;

public class ShimPackTests
{
    private static readonly double[] Sizes = [0.5, 1, 2];

    [Fact]
    public void Every_stack_of_up_to_three_stands_on_the_list_once() => Assert.Equal(
        ["2", "2+2", "2+2+2", "2+2+1", "2+1", "2+1+1", "1", "1+1", "1+1+1"],
        ShimPack.All([1, 2]).Select(p => string.Join('+', p.ThicknessesMm)));

    /// <remarks>Multisets of 1, 2 and 3 out of n sizes: n + n(n + 1)/2 + n(n + 1)(n + 2)/6.</remarks>
    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 9)]
    [InlineData(3, 19)]
    [InlineData(5, 55)]
    public void There_are_as_many_stacks_as_multisets(int sizes, int stacks)
    {
        List<string> all = [.. ShimPack.All([.. Enumerable.Range(1, sizes).Select(n => 0.25 * n)])
            .Select(p => string.Join('+', p.ThicknessesMm))];

        Assert.Equal(stacks, all.Count);
        Assert.Equal(stacks, all.Distinct().Count());
    }

    [Fact]
    public void A_size_listed_twice_is_one_size() => Assert.Equal(3, ShimPack.All([1, 1]).Count());

    [Property]
    public void The_nearest_stack_is_the_nearest_of_all_and_of_those_the_one_of_fewest_shims(byte hundredths)
    {
        double wanted = hundredths / 32.0;
        var nearest = (Off: Math.Abs(wanted), Count: 0);
        for (int halves = 0; halves <= ShimPack.Most; halves++)
        {
            for (int ones = 0; halves + ones <= ShimPack.Most; ones++)
            {
                for (int twos = 0; halves + ones + twos <= ShimPack.Most; twos++)
                {
                    (double Off, int Count) stack = (Math.Abs(wanted - ((0.5 * halves) + ones + (2 * twos))), halves + ones + twos);
                    nearest = stack.CompareTo(nearest) < 0 ? stack : nearest;
                }
            }
        }

        ShimPack found = ShimPack.Nearest(wanted, Sizes);

        Assert.Equal(nearest.Off, Math.Abs(wanted - found.TotalMm), 1e-12);
        Assert.Equal(nearest.Count, found.ThicknessesMm.Count);
    }

    [Theory]
    [InlineData(0, "no shim")]
    [InlineData(0.25, "no shim")]
    [InlineData(0.26, "0.5 mm")]
    [InlineData(2.4, "2 + 0.5 mm")]
    [InlineData(3.5, "2 + 1 + 0.5 mm")]
    [InlineData(9, "2 + 2 + 2 mm")]
    public void A_stack_is_told_thickest_first(double wanted, string told) =>
        Assert.Equal(told, ShimPack.Nearest(wanted, Sizes).ToString());

    [Fact]
    public void Without_sizes_there_is_no_shim() => Assert.Empty(ShimPack.Nearest(2, []).ThicknessesMm);
}
