using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Numerics;

public class LeastSquaresTests
{
    /// <summary>MathNet as oracle. Its QR and ours are both backward stable: 1e-11 for conditions up to some hundreds.</summary>
    [Theory]
    [InlineData(3, 3)]
    [InlineData(5, 2)]
    [InlineData(24, 3)]
    [InlineData(40, 12)]
    public void Fits_of_random_problems_are_those_of_a_library(int rows, int unknowns)
    {
        var random = new Random((100 * rows) + unknowns);
        for (int repeat = 0; repeat < 20; repeat++)
        {
            // Ones on the diagonal keep small square problems away from singular.
            Matrix<double> design = Matrix<double>.Build.Dense(rows, unknowns, (i, j) => random.NextDouble() - 0.5 + (i == j ? 2 : 0));
            Vector<double> observed = Vector<double>.Build.Dense(rows, _ => random.NextDouble());
            LeastSquaresFit fit = LeastSquares.Fit([.. design.EnumerateRows().SelectMany(row => row)], unknowns, observed.ToArray());

            Vector<double> coefficients = design.QR().Solve(observed);
            Vector<double> left = observed - (design * coefficients);
            Matrix<double> cofactors = (design.Transpose() * design).Inverse();

            Close.To(coefficients.ToArray(), [.. fit.Coefficients], 1e-11);
            Close.To(left.DotProduct(left), fit.SumOfSquares, 1e-11);
            Assert.Equal(rows - unknowns, fit.DegreesOfFreedom);
            for (int i = 0; i < unknowns; i++)
            {
                for (int j = 0; j < unknowns; j++)
                {
                    Close.To(cofactors[i, j], fit.Cofactors[i, j], 1e-11);
                }
            }
        }
    }

    [Fact]
    public void A_fit_through_as_many_points_as_unknowns_leaves_nothing_to_judge_it_by()
    {
        LeastSquaresFit fit = LeastSquares.Fit([1, 0, 1, 2], 2, [3, 7]);

        Close.To([3, 2], [.. fit.Coefficients], 1e-14);
        Assert.Equal(0, fit.SumOfSquares);
        Assert.True(double.IsNaN(fit.ResidualSd));
        Assert.True(double.IsNaN(fit.U(0)));
    }

    [Fact]
    public void Columns_that_depend_on_each_other_are_refused()
    {
        var error = Assert.Throws<ArgumentException>(() => LeastSquares.Fit([1, 2, 3, 1, 3, 4, 1, 5, 6, 1, 9, 10], 3, [1, 2, 3, 4]));

        Assert.Equal("Column 2 of the design says nothing that the columns before it do not.", error.Message);
    }

    [Fact]
    public void An_empty_column_is_refused() =>
        Assert.Equal(
            "Column 0 of the design says nothing that the columns before it do not.",
            Assert.Throws<ArgumentException>(() => LeastSquares.Fit([0, 0], 1, [1, 2])).Message);

    [Theory]
    [InlineData(3, 2, 6)]
    [InlineData(2, 3, 5)]
    public void Shapes_that_do_not_fit_are_refused(int unknowns, int rows, int entries)
    {
        var error = Assert.Throws<ArgumentException>(() => LeastSquares.Fit(new double[entries], unknowns, new double[rows]));

        Assert.Equal(
            $"{unknowns} unknowns and {rows} observations do not fit a design of {entries} entries. (Parameter 'design')",
            error.Message);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_refused(double value)
    {
        const string message = "Every entry of the design and every observation must be a finite number. (Parameter 'design')";

        Assert.Equal(message, Assert.Throws<ArgumentException>(() => LeastSquares.Fit([1, value], 1, [1, 2])).Message);
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => LeastSquares.Fit([1, 1], 1, [1, value])).Message);
    }
}
