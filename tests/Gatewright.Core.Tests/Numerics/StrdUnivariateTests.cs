using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

/// <summary>NIST Statistical Reference Datasets, univariate summary statistics: certified means and standard deviations.</summary>
public class StrdUnivariateTests
{
    // The mean to all its digits but rounding; the standard deviation to what the data leave: a value as printed is
    // off by half a unit of its double, which is 1e-16 of the mean, so log₁₀(mean/sd) of the 16 digits are gone before
    // the arithmetic starts. That leaves 15 of NumAcc1 (integers, exact), 14 of NumAcc2, 9 of NumAcc3, 8 of NumAcc4.
    [Theory]
    [InlineData("NumAcc1", 3, 10000002, 1, 15, 15)]
    [InlineData("NumAcc2", 1001, 1.2, 0.1, 14.5, 14)]
    [InlineData("NumAcc3", 1001, 1000000.2, 0.1, 14.5, 9)]
    [InlineData("NumAcc4", 1001, 10000000.2, 0.1, 14.5, 8)]
    [InlineData("Lottery", 218, 518.958715596330, 291.699727470969, 14.5, 14)]
    [InlineData("Lew", 200, -177.435, 277.332168044316, 14.5, 14)]
    [InlineData("Mavro", 50, 2.001856, 0.000429123454003053, 14.5, 12)]
    [InlineData("Michelso", 100, 299.8524, 0.0790105478190518, 14.5, 13)]
    public void Moments_are_as_certified(string set, int count, double mean, double sd, double digitsOfMean, double digitsOfSd)
    {
        double[] values = Values(set);
        Moments moments = Moments.Of(values);

        Assert.Equal(count, moments.Count);
        Digits.AtLeast(digitsOfMean, mean, moments.Mean, "mean");
        Digits.AtLeast(digitsOfSd, sd, moments.Sd, "standard deviation");
    }

    /// <summary>The constructed sets are given by their rule, as the data files hold them.</summary>
    private static double[] Values(string set) => set switch
    {
        "NumAcc1" => [10000001, 10000003, 10000002],
        "NumAcc2" => Alternating(1.2, 1.1, 1.3),
        "NumAcc3" => Alternating(1000000.2, 1000000.1, 1000000.3),
        "NumAcc4" => Alternating(10000000.2, 10000000.1, 10000000.3),
        _ => [.. Embedded.Table(set).SelectMany(row => row)],
    };

    private static double[] Alternating(double first, double odd, double even) =>
        [first, .. Enumerable.Range(1, 1000).Select(i => i % 2 == 1 ? odd : even)];
}
