namespace Gatewright.Core.Numerics;

/// <summary>
/// A symmetric positive-definite matrix as L Lᵀ, L lower triangular: the whole of the inference rests on it.
/// </summary>
/// <remarks>
/// Works in place on row-major spans and allocates nothing; the sizes here (a boat's readings, at most some dozens)
/// are too small for a blocked algorithm to pay.
/// </remarks>
public static class Cholesky
{
    /// <summary>Replaces the lower triangle by L; what stands above the diagonal is neither read nor written.</summary>
    /// <param name="matrix">Row-major, <paramref name="size"/> by <paramref name="size"/>.</param>
    /// <param name="size">Rows, and columns.</param>
    /// <returns>False when the matrix is not positive definite; its contents are then spoilt.</returns>
    public static bool Factor(Span<double> matrix, int size)
    {
        for (int row = 0; row < size; row++)
        {
            Span<double> rowSpan = matrix.Slice(row * size, row + 1);
            for (int column = 0; column < row; column++)
            {
                ReadOnlySpan<double> above = matrix.Slice(column * size, column + 1);
                rowSpan[column] = (rowSpan[column] - Dot(rowSpan[..column], above[..column])) / above[column];
            }

            double pivot = rowSpan[row] - Dot(rowSpan[..row], rowSpan[..row]);
            if (!(pivot > 0 && double.IsFinite(pivot)))
            {
                return false;
            }

            rowSpan[row] = Math.Sqrt(pivot);
        }

        return true;
    }

    /// <summary>Replaces v by L⁻¹ v.</summary>
    public static void SolveLower(ReadOnlySpan<double> factor, int size, Span<double> vector)
    {
        for (int row = 0; row < size; row++)
        {
            ReadOnlySpan<double> line = factor.Slice(row * size, row + 1);
            vector[row] = (vector[row] - Dot(line[..row], vector[..row])) / line[row];
        }
    }

    /// <summary>Replaces v by L⁻ᵀ v.</summary>
    public static void SolveUpper(ReadOnlySpan<double> factor, int size, Span<double> vector)
    {
        for (int row = size - 1; row >= 0; row--)
        {
            double value = vector[row];
            for (int below = row + 1; below < size; below++)
            {
                value -= factor[(below * size) + row] * vector[below];
            }

            vector[row] = value / factor[(row * size) + row];
        }
    }

    /// <summary>ln |L Lᵀ|.</summary>
    public static double LogDeterminant(ReadOnlySpan<double> factor, int size)
    {
        double sum = 0;
        for (int i = 0; i < size; i++)
        {
            sum += Math.Log(factor[(i * size) + i]);
        }

        return 2 * sum;
    }

    internal static double Dot(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        double sum = 0;
        for (int i = 0; i < left.Length; i++)
        {
            sum += left[i] * right[i];
        }

        return sum;
    }
}
