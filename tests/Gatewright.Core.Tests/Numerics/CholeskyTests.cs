using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Numerics;

public class CholeskyTests
{
    /// <summary>The textbook 3 × 3 example, rows (2), (6, 1), (−8, 5, 3). From memory.</summary>
    [Fact]
    public void The_textbook_matrix_has_its_published_factor()
    {
        double[] matrix = [4, 12, -16, 12, 37, -43, -16, -43, 98];

        Assert.True(Cholesky.Factor(matrix, 3));
        Assert.Equal([2, 6, 1, -8, 5, 3], [matrix[0], matrix[3], matrix[4], matrix[6], matrix[7], matrix[8]]);
        Close.To(Math.Log(36), Cholesky.LogDeterminant(matrix, 3), 1e-15);
    }

    [Fact]
    public void What_stands_above_the_diagonal_is_neither_read_nor_written()
    {
        double[] matrix = [4, double.NaN, 12, 37];

        Assert.True(Cholesky.Factor(matrix, 2));
        Assert.Equal([2, double.NaN, 6, 1], matrix);
    }

    [Theory]
    [InlineData(1, 2, 1)]
    [InlineData(0, 0, 1)]
    [InlineData(1, 1, 1)]
    [InlineData(-1, 0, 1)]
    [InlineData(double.NaN, 0, 1)]
    [InlineData(1, double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 0, 1)]
    public void A_matrix_that_is_not_positive_definite_is_told(double first, double below, double second) =>
        Assert.False(Cholesky.Factor([first, 0, below, second], 2));

    /// <summary>MathNet as oracle, on matrices of a boat's size. Both are backward stable: 1e-12 of well-conditioned answers.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(24)]
    [InlineData(60)]
    public void Factor_determinant_and_solutions_are_those_of_a_library(int size)
    {
        var random = new Random(size);
        for (int repeat = 0; repeat < 20; repeat++)
        {
            Matrix<double> root = Matrix<double>.Build.Dense(size, size, (_, _) => random.NextDouble() - 0.5);
            Matrix<double> matrix = (root * root.Transpose()) + Matrix<double>.Build.DenseIdentity(size);
            Vector<double> right = Vector<double>.Build.Dense(size, _ => random.NextDouble());
            var oracle = matrix.Cholesky();
            double[] factor = RowMajor(matrix);
            double[] half = right.ToArray();
            double[] solution = right.ToArray();

            Assert.True(Cholesky.Factor(factor, size));
            Cholesky.SolveLower(factor, size, half);
            Cholesky.SolveLower(factor, size, solution);
            Cholesky.SolveUpper(factor, size, solution);

            Close.To(oracle.DeterminantLn, Cholesky.LogDeterminant(factor, size), 1e-12);
            Close.To(oracle.Factor.Solve(right).ToArray(), half, 1e-12);
            Close.To(oracle.Solve(right).ToArray(), solution, 1e-12);
        }
    }

    private static double[] RowMajor(Matrix<double> matrix) => [.. matrix.EnumerateRows().SelectMany(row => row)];
}
