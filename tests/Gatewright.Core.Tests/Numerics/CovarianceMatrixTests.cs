using FsCheck.Xunit;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

public class CovarianceMatrixTests
{
    [Fact]
    public void It_gives_back_variances_uncertainties_and_correlations()
    {
        var matrix = new CovarianceMatrix(2, [4, 3, 3, 9]);

        Assert.Equal(2, matrix.Size);
        Assert.Equal((2.0, 3.0), (matrix.U(0), matrix.U(1)));
        Assert.Equal((3.0, 3.0, 0.5), (matrix[0, 1], matrix[1, 0], matrix.Correlation(0, 1)));
    }

    [Fact]
    public void A_quantity_known_exactly_has_no_correlation() =>
        Assert.True(double.IsNaN(new CovarianceMatrix(2, [0, 0, 0, 1]).Correlation(0, 1)));

    [Fact]
    public void A_wrong_number_of_entries_is_refused()
    {
        var error = Assert.Throws<ArgumentException>(() => new CovarianceMatrix(2, [1, 0, 1]));

        Assert.Equal("2 quantities need 4 entries, not 3. (Parameter 'rows')", error.Message);
    }

    [Theory]
    [InlineData(1, 0.5, 0.4, 1, "Entry (1, 0) is not that of a covariance matrix. (Parameter 'rows')")]
    [InlineData(-1, 0, 0, 1, "Entry (0, 0) is not that of a covariance matrix. (Parameter 'rows')")]
    [InlineData(1, 0, 0, double.NaN, "Entry (1, 1) is not that of a covariance matrix. (Parameter 'rows')")]
    [InlineData(1, 0, 0, double.PositiveInfinity, "Entry (1, 1) is not that of a covariance matrix. (Parameter 'rows')")]
    [InlineData(1, double.PositiveInfinity, double.PositiveInfinity, 1, "Entry (1, 0) is not that of a covariance matrix. (Parameter 'rows')")]
    [InlineData(1, double.NaN, double.NaN, 1, "Entry (1, 0) is not that of a covariance matrix. (Parameter 'rows')")]
    public void What_is_no_covariance_matrix_is_refused(double a, double b, double c, double d, string message)
    {
        var error = Assert.Throws<ArgumentException>(() => new CovarianceMatrix(2, [a, b, c, d]));

        Assert.Equal(message, error.Message);
    }

    [Fact]
    public void Sensitivities_of_a_wrong_number_are_refused()
    {
        var matrix = new CovarianceMatrix(2, [1, 0, 0, 1]);

        var shorter = Assert.Throws<ArgumentException>(() => matrix.Variance([1]));
        var longer = Assert.Throws<ArgumentException>(() => matrix.Covariance([1, 1], [1, 1, 1]));
        var jacobian = Assert.Throws<ArgumentException>(() => matrix.Propagate(2, [1, 0, 0, 1, 0]));

        Assert.Equal("2 quantities need 2 sensitivities, not 1.", shorter.Message);
        Assert.Equal("2 quantities need 2 sensitivities, not 3.", longer.Message);
        Assert.Equal("2 sums of 2 quantities need 4 sensitivities, not 5. (Parameter 'jacobian')", jacobian.Message);
    }

    [Fact]
    public void What_two_quantities_share_drops_out_of_their_difference()
    {
        // Each 0.3 of its own and 0.4 shared.
        var matrix = new CovarianceMatrix(2, [0.25, 0.16, 0.16, 0.25]);

        Close.To(0.18, matrix.Variance([1, -1]), 1e-16);
        Close.To(0.82, matrix.Variance([1, 1]), 1e-15);
    }

    /// <summary>Where everything is shared, nothing is left of a difference: rounding must not make it less than nothing.</summary>
    [Property]
    public void A_variance_that_cancels_is_never_below_nothing(short thousandths)
    {
        double[] shared = [0.1, 0.7 + (thousandths / 1000.0), 1.3, -0.4];
        double[] rows = [.. from x in shared from y in shared select x * y];
        var matrix = new CovarianceMatrix(4, rows);
        double[] cancelling =
        [
            shared[1], -shared[0], 0, 0,
            0, shared[2], -shared[1], 0,
            0, 0, shared[3], -shared[2],
        ];

        CovarianceMatrix differences = matrix.Propagate(3, cancelling);

        for (int i = 0; i < 3; i++)
        {
            // Fourth powers of values up to 34, times 1e-16.
            Assert.InRange(differences[i, i], 0, 1e-9);
            Assert.InRange(matrix.Variance(cancelling.AsSpan(4 * i, 4)), 0, 1e-9);
        }
    }
}
