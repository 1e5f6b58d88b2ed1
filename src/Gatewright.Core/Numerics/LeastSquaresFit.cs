namespace Gatewright.Core.Numerics;

/// <summary>What a least-squares fit found.</summary>
/// <param name="Coefficients">The unknowns, in the order of the design's columns.</param>
/// <param name="Cofactors">(XᵀX)⁻¹: the coefficients' covariances for observations of variance 1.</param>
/// <param name="SumOfSquares">The squares left over.</param>
/// <param name="DegreesOfFreedom">Observations less unknowns.</param>
public sealed record LeastSquaresFit(
    IReadOnlyList<double> Coefficients, CovarianceMatrix Cofactors, double SumOfSquares, int DegreesOfFreedom)
{
    /// <summary>The standard deviation of what is left over; NaN when nothing is.</summary>
    public double ResidualSd => DegreesOfFreedom == 0 ? double.NaN : Math.Sqrt(SumOfSquares / DegreesOfFreedom);

    /// <summary>The standard uncertainty of a coefficient, by the scatter about the fit.</summary>
    public double U(int coefficient) => ResidualSd * Cofactors.U(coefficient);
}
