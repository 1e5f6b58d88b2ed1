using Gatewright.Core.Numerics;

namespace Gatewright.Drawings.Leans;

/// <summary>
/// Where a pair of quantities lies with a probability of 95 %: its half axes are √(χ² λ) with λ the eigenvalues of their
/// covariance and χ² = 5.991, the 95 % point of chi squared with two degrees of freedom.
/// </summary>
/// <param name="Major">The longer half axis.</param>
/// <param name="Minor">The shorter half axis.</param>
/// <param name="Turn">From the first quantity's axis to the longer half axis, towards the second's, in degrees, −90 to 90.</param>
public sealed record LeanEllipse(double Major, double Minor, double Turn)
{
    /// <summary>−2 ln 0.05: with two degrees of freedom the distribution is in closed form.</summary>
    private static readonly double ChiSquared = -2 * Math.Log(0.05);

    /// <summary>The ellipse of two quantities.</summary>
    /// <exception cref="ArgumentException">Not two.</exception>
    public static LeanEllipse Of(CovarianceMatrix covariance)
    {
        if (covariance.Size != 2)
        {
            throw new ArgumentException($"An ellipse has 2 quantities, not {covariance.Size}.", nameof(covariance));
        }

        double mean = (covariance[0, 0] + covariance[1, 1]) / 2;
        double half = (covariance[0, 0] - covariance[1, 1]) / 2;
        double apart = Math.Sqrt((half * half) + (covariance[0, 1] * covariance[0, 1]));
        return new(Axis(mean + apart), Axis(mean - apart), Math.Atan2(covariance[0, 1], half) * 90 / Math.PI);
    }

    // Rounding can leave the smaller eigenvalue of a line a little below nothing.
    private static double Axis(double eigenvalue) => Math.Sqrt(ChiSquared * Math.Max(0, eigenvalue));
}
