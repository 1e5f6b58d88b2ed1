namespace Gatewright.Core.Numerics;

/// <summary>Variances and covariances of several quantities measured together. Immutable and symmetric.</summary>
public sealed class CovarianceMatrix
{
    private readonly double[] _values;

    /// <summary>A matrix from its entries, row by row.</summary>
    /// <exception cref="ArgumentException">Not square, not symmetric, not finite, or a variance below 0.</exception>
    public CovarianceMatrix(int size, ReadOnlySpan<double> rows)
    {
        if (rows.Length != size * size)
        {
            throw new ArgumentException($"{size} quantities need {size * size} entries, not {rows.Length}.", nameof(rows));
        }

        Size = size;
        _values = rows.ToArray();
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                if (!double.IsFinite(this[i, j]) || this[i, j] != this[j, i] || (i == j && this[i, i] < 0))
                {
                    throw new ArgumentException($"Entry ({i}, {j}) is not that of a covariance matrix.", nameof(rows));
                }
            }
        }
    }

    /// <summary>How many quantities.</summary>
    public int Size { get; }

    /// <summary>The covariance of two quantities; of one with itself, its variance.</summary>
    public double this[int i, int j] => _values[(i * Size) + j];

    /// <summary>The standard uncertainty of a quantity.</summary>
    public double U(int i) => Math.Sqrt(this[i, i]);

    /// <summary>The correlation coefficient of two quantities, −1 to 1; NaN where one has no uncertainty.</summary>
    public double Correlation(int i, int j) => this[i, j] / (U(i) * U(j));

    /// <summary>
    /// The variance of a sum of the quantities, each times its sensitivity: cᵀ Σ c. With the sensitivities of a
    /// function it is the law of propagation of uncertainty (JCGM 100:2008, 5.2.2, equation 13).
    /// </summary>
    /// <returns>0 or more: where everything cancels, rounding alone would leave as often less than nothing.</returns>
    /// <exception cref="ArgumentException">Not one sensitivity for each quantity.</exception>
    public double Variance(ReadOnlySpan<double> sensitivities) => Math.Max(0, Covariance(sensitivities, sensitivities));

    /// <summary>The covariance of two such sums (JCGM 100:2008, H.2.3).</summary>
    /// <exception cref="ArgumentException">Not one sensitivity for each quantity.</exception>
    public double Covariance(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        if (first.Length != Size || second.Length != Size)
        {
            throw new ArgumentException(
                $"{Size} quantities need {Size} sensitivities, not {(first.Length != Size ? first : second).Length}.");
        }

        double sum = 0;
        for (int i = 0; i < Size; i++)
        {
            sum += first[i] * Cholesky.Dot(_values.AsSpan(i * Size, Size), second);
        }

        return sum;
    }

    /// <summary>The covariances of several such sums: J Σ Jᵀ, J given row by row.</summary>
    /// <exception cref="ArgumentException">J has not one row for each result and one column for each quantity.</exception>
    public CovarianceMatrix Propagate(int results, ReadOnlySpan<double> jacobian)
    {
        if (jacobian.Length != results * Size)
        {
            throw new ArgumentException(
                $"{results} sums of {Size} quantities need {results * Size} sensitivities, not {jacobian.Length}.", nameof(jacobian));
        }

        double[] rows = new double[results * results];
        for (int i = 0; i < results; i++)
        {
            ReadOnlySpan<double> line = jacobian.Slice(i * Size, Size);
            rows[(i * results) + i] = Variance(line);
            for (int j = 0; j < i; j++)
            {
                double value = Covariance(line, jacobian.Slice(j * Size, Size));
                rows[(i * results) + j] = value;
                rows[(j * results) + i] = value;
            }
        }

        return new(results, rows);
    }
}
