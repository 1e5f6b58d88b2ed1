namespace Gatewright.Core.Numerics;

/// <summary>Linear least squares by Householder reflections, which keeps the digits that normal equations lose.</summary>
public static class LeastSquares
{
    /// <summary>The coefficients b that make ‖y − X b‖ least.</summary>
    /// <param name="design">X, row by row; at least as many rows as unknowns.</param>
    /// <param name="unknowns">Columns of X.</param>
    /// <param name="observations">y, one for each row.</param>
    /// <exception cref="ArgumentException">
    /// The shapes disagree, an entry is not finite, or the columns are not independent.
    /// </exception>
    public static LeastSquaresFit Fit(ReadOnlySpan<double> design, int unknowns, ReadOnlySpan<double> observations)
    {
        int rows = observations.Length;
        if (rows < unknowns || design.Length != rows * unknowns)
        {
            throw new ArgumentException(
                $"{unknowns} unknowns and {rows} observations do not fit a design of {design.Length} entries.", nameof(design));
        }

        if (!AllFinite(design) || !AllFinite(observations))
        {
            throw new ArgumentException("Every entry of the design and every observation must be a finite number.", nameof(design));
        }

        double[] columns = Transpose(design, rows, unknowns);
        double[] right = observations.ToArray();
        double[] diagonal = Triangularise(columns, rows, unknowns, right);
        double[] coefficients = BackSubstitute(columns, diagonal, rows, right.AsSpan(0, unknowns));
        double squares = Cholesky.Dot(right.AsSpan(unknowns), right.AsSpan(unknowns));
        return new(coefficients, InverseNormal(columns, diagonal, rows), squares, rows - unknowns);
    }

    /// <summary>Columns one after another: a reflection runs down columns.</summary>
    private static double[] Transpose(ReadOnlySpan<double> design, int rows, int unknowns)
    {
        double[] columns = new double[design.Length];
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < unknowns; column++)
            {
                columns[(column * rows) + row] = design[(row * unknowns) + column];
            }
        }

        return columns;
    }

    /// <summary>Leaves R above the diagonal of the columns and Qᵀy in the right side; returns R's diagonal.</summary>
    private static double[] Triangularise(double[] columns, int rows, int unknowns, double[] right)
    {
        double[] diagonal = new double[unknowns];
        for (int k = 0; k < unknowns; k++)
        {
            Span<double> column = columns.AsSpan((k * rows) + k, rows - k);
            double whole = Norm(columns.AsSpan(k * rows, rows));
            double length = Norm(column);
            if (!(length > 1e-14 * whole))
            {
                throw new ArgumentException($"Column {k} of the design says nothing that the columns before it do not.");
            }

            // The sign that adds to the leading entry: the other would cancel.
            diagonal[k] = column[0] > 0 ? -length : length;
            column[0] -= diagonal[k];
            double scale = -1 / (diagonal[k] * column[0]);
            for (int j = k + 1; j < unknowns; j++)
            {
                Reflect(column, scale, columns.AsSpan((j * rows) + k, rows - k));
            }

            Reflect(column, scale, right.AsSpan(k));
        }

        return diagonal;
    }

    private static void Reflect(ReadOnlySpan<double> axis, double scale, Span<double> vector)
    {
        double factor = scale * Cholesky.Dot(axis, vector);
        for (int i = 0; i < axis.Length; i++)
        {
            vector[i] -= factor * axis[i];
        }
    }

    private static double[] BackSubstitute(double[] columns, double[] diagonal, int rows, ReadOnlySpan<double> right)
    {
        double[] result = right.ToArray();
        for (int i = diagonal.Length - 1; i >= 0; i--)
        {
            for (int j = i + 1; j < diagonal.Length; j++)
            {
                result[i] -= columns[(j * rows) + i] * result[j];
            }

            result[i] /= diagonal[i];
        }

        return result;
    }

    /// <summary>(XᵀX)⁻¹ = R⁻¹ R⁻ᵀ.</summary>
    private static CovarianceMatrix InverseNormal(double[] columns, double[] diagonal, int rows)
    {
        int size = diagonal.Length;
        double[] inverse = new double[size * size];
        double[] unit = new double[size];
        for (int k = 0; k < size; k++)
        {
            Array.Clear(unit);
            unit[k] = 1;
            BackSubstitute(columns, diagonal, rows, unit).CopyTo(inverse, k * size);
        }

        double[] product = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = 0;
                for (int k = 0; k < size; k++)
                {
                    sum += inverse[(k * size) + i] * inverse[(k * size) + j];
                }

                product[(i * size) + j] = sum;
                product[(j * size) + i] = sum;
            }
        }

        return new(size, product);
    }

    private static bool AllFinite(ReadOnlySpan<double> values)
    {
        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                return false;
            }
        }

        return true;
    }

    private static double Norm(ReadOnlySpan<double> vector) => Math.Sqrt(Cholesky.Dot(vector, vector));
}
