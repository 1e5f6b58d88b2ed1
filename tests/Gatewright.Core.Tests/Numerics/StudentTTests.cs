using FsCheck.Xunit;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

public class StudentTTests
{
    /// <summary>
    /// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t, from memory; each is given to three
    /// decimals. The last: JCGM 100:2008, Table G.2, ν = 16, 95 %, 2.12, to two.
    /// </summary>
    [Theory]
    [InlineData(1, 0.975, 12.706, 5e-4)]
    [InlineData(2, 0.975, 4.303, 5e-4)]
    [InlineData(4, 0.975, 2.776, 5e-4)]
    [InlineData(10, 0.95, 1.812, 5e-4)]
    [InlineData(30, 0.995, 2.750, 5e-4)]
    [InlineData(100, 0.999, 3.174, 5e-4)]
    [InlineData(16, 0.975, 2.12, 5e-3)]
    [InlineData(16, 0.995, 2.92, 5e-3)]
    public void The_usual_quantiles_are_where_the_tables_have_them(double freedom, double probability, double t, double tolerance)
    {
        Close.To(t, StudentT.Quantile(probability, freedom), tolerance);
        Close.To(-t, StudentT.Quantile(1 - probability, freedom), tolerance);
    }

    /// <summary>With one degree of freedom it is Cauchy's: ½ + atan(t)/π; with two, ½ + t/(2√(2 + t²)).</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(30)]
    public void With_one_and_two_degrees_of_freedom_it_is_known_in_closed_form(double t)
    {
        Close.To(0.5 + (Math.Atan(t) / Math.PI), StudentT.Cdf(t, 1), 1e-14);
        Close.To(0.5 + (t / (2 * Math.Sqrt(2 + (t * t)))), StudentT.Cdf(t, 2), 1e-14);
    }

    /// <summary>MathNet as oracle. Both lose digits as the degrees of freedom grow: 2e-12 is what was found at most.</summary>
    [Fact]
    public void It_agrees_with_a_library()
    {
        foreach (double freedom in new[] { 1, 2, 3, 5, 6.5, 13, 52, 300 })
        {
            for (double t = -12; t <= 12; t += 0.37)
            {
                Close.To(MathNet.Numerics.Distributions.StudentT.CDF(0, 1, freedom, t), StudentT.Cdf(t, freedom), 2e-12);
            }

            foreach (double probability in new[] { 0.001, 0.025, 0.3, 0.9, 0.9995 })
            {
                double oracle = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, freedom, probability);
                Close.To(oracle, StudentT.Quantile(probability, freedom), 1e-7 * Math.Abs(oracle));
            }
        }
    }

    [Property]
    public void The_quantile_undoes_the_distribution(ushort chance, byte more)
    {
        double probability = (chance + 1.0) / (ushort.MaxValue + 2.0);

        Close.To(probability, StudentT.Cdf(StudentT.Quantile(probability, 1 + more), 1 + more), 1e-11);
    }

    [Theory]
    [InlineData(0, 3)]
    [InlineData(1, 3)]
    [InlineData(double.NaN, 3)]
    [InlineData(0.5, 0)]
    public void What_is_no_probability_or_no_freedom_is_refused(double probability, double freedom) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(probability, freedom));
}
