using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

public class GaussianDensityTests
{
    private static readonly CovarianceMatrix Covariance = new(3, [1, 2, 0, 2, 5, 0.5, 0, 0.5, 3]);

    /// <summary>
    /// The reference output of the R package mnormt (dmnorm): mean (1, 3, 2), at (x, 3x − 2, x + cos(3x − 2)). Ten
    /// decimals are published.
    /// </summary>
    [Theory]
    [InlineData(0, 0.0002214706)]
    [InlineData(0.5, 0.0013819953)]
    [InlineData(1, 0.0049138692)]
    [InlineData(1.5, 0.0103803050)]
    [InlineData(2, 0.0140250800)]
    public void The_density_is_as_published(double x, double density)
    {
        double[] deviation = [x - 1, (3 * x) - 2 - 3, x + Math.Cos((3 * x) - 2) - 2];

        Close.To(density, Math.Exp(GaussianDensity.Log(deviation, Covariance)), 0.5e-10);
    }

    [Fact]
    public void In_one_dimension_it_is_the_normal_density()
    {
        // φ(1.5) / 2 for a standard deviation of 2.
        double log = GaussianDensity.Log([3], new CovarianceMatrix(1, [4]));

        Close.To(Normal.Density(1.5) / 2, Math.Exp(log), 1e-16);
    }

    [Fact]
    public void Sizes_that_disagree_are_refused() =>
        Assert.Equal(
            "2 values and 3 variances. (Parameter 'covariance')",
            Assert.Throws<ArgumentException>(() => GaussianDensity.Log([1, 2], Covariance)).Message);

    [Fact]
    public void A_covariance_without_an_inverse_is_refused() =>
        Assert.Equal(
            "The covariance is not positive definite. (Parameter 'covariance')",
            Assert.Throws<ArgumentException>(() => GaussianDensity.Log([1, 2], new CovarianceMatrix(2, [1, 1, 1, 1]))).Message);
}
