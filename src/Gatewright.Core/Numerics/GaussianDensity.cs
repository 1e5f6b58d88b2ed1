namespace Gatewright.Core.Numerics;

/// <summary>The multivariate normal density.</summary>
public static class GaussianDensity
{
    /// <summary>ln N(x; μ, Σ) = −½ (n ln 2π + ln |Σ| + (x − μ)ᵀ Σ⁻¹ (x − μ)).</summary>
    /// <param name="deviation">x − μ.</param>
    /// <param name="covariance">Σ.</param>
    /// <exception cref="ArgumentException">The sizes disagree, or Σ is not positive definite.</exception>
    public static double Log(ReadOnlySpan<double> deviation, CovarianceMatrix covariance)
    {
        ArgumentNullException.ThrowIfNull(covariance);
        int size = deviation.Length;
        if (covariance.Size != size)
        {
            throw new ArgumentException($"{size} values and {covariance.Size} variances.", nameof(covariance));
        }

        double[] factor = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                factor[(i * size) + j] = covariance[i, j];
            }
        }

        if (!Cholesky.Factor(factor, size))
        {
            throw new ArgumentException("The covariance is not positive definite.", nameof(covariance));
        }

        double[] whitened = deviation.ToArray();
        Cholesky.SolveLower(factor, size, whitened);
        return -0.5 * ((size * Math.Log(2 * Math.PI))
            + Cholesky.LogDeterminant(factor, size)
            + Cholesky.Dot(whitened, whitened));
    }
}
