using FsCheck.Xunit;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

public class OutliersTests
{
    private static readonly double[] s_grubbs = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    private static readonly double[] s_rosner =
    [
        -0.25, .68, .94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70, 1.76, 1.77, 1.81, 1.91,
        1.94, 1.96, 1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47, 2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93,
        3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01,
    ];

    /// <summary>
    /// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1: G 2.468765. Its critical value 2.032 is the one-sided one (from
    /// memory), which is the two-sided one at twice the level; the two-sided 2.1266.
    /// </summary>
    [Fact]
    public void Grubbs_of_the_handbook()
    {
        OutlierStep step = Outliers.Steps(s_grubbs, 1).Single();

        Assert.Equal(7, step.Index);
        Close.To(2.468765, step.Ratio, 5e-7);
        Close.To(2.1266, step.Critical, 5e-5);
        Close.To(2.032, Outliers.Critical(8, 0.10), 5e-4);
        Assert.Equal([7], Outliers.Find(s_grubbs, 1));
    }

    /// <summary>The same, 1.3.5.17.3: Rosner's 54 values. The printed figures are cut off, not rounded: they agree within 0.001.</summary>
    [Fact]
    public void Rosner_of_the_handbook()
    {
        double[] ratios = [3.118, 2.942, 3.179, 2.810, 2.815, 2.848, 2.279, 2.310, 2.101, 2.067];
        double[] criticals = [3.158, 3.151, 3.143, 3.136, 3.128, 3.120, 3.111, 3.103, 3.094, 3.085];

        IReadOnlyList<OutlierStep> steps = Outliers.Steps(s_rosner, 10);

        Assert.Equal(54, s_rosner.Length);
        for (int i = 0; i < 10; i++)
        {
            Close.To(ratios[i], steps[i].Ratio, 0.001);
            Close.To(criticals[i], steps[i].Critical, 0.001);
        }

        // Three, though the first two by themselves would not be: each hides the others.
        Assert.Equal([6.01, 5.42, 5.34], Outliers.Find(s_rosner, 10).Select(i => s_rosner[i]));
    }

    [Property]
    public void What_is_an_outlier_stays_one_shifted_and_scaled(short[] values, short shift, byte scale, bool isMirrored)
    {
        if (values.Length < 7 || values.Distinct().Count() < 4)
        {
            return;
        }

        double by = (isMirrored ? -1 : 1) * (scale + 1) / 16.0;
        double[] one = [.. values.Select(v => v / 8.0)];
        double[] other = [.. one.Select(v => (by * v) + shift)];
        IReadOnlyList<OutlierStep> first = Outliers.Steps(one, 2);

        // On the edge itself rounding may fall either way.
        if (first.Any(s => Math.Abs(s.Ratio - s.Critical) < 1e-6))
        {
            return;
        }

        Assert.Equal(Outliers.Find(one, 2).Count, Outliers.Find(other, 2).Count);
        Assert.Equal(first[0].Ratio, Outliers.Steps(other, 2)[0].Ratio, 9);
    }

    [Fact]
    public void Where_all_are_alike_none_lies_out() => Assert.Empty(Outliers.Find([4, 4, 4, 4, 4, 4, 4, 4], 2));

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void More_outliers_than_all_but_two_cannot_be_looked_for(int most) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Outliers.Steps(s_grubbs, most));
}
