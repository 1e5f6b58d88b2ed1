namespace Gatewright.Core.Measuring;

/// <summary>
/// Where an uncertainty comes from, each part as its contribution in degrees: the part's standard uncertainty times
/// how strongly the result follows it (JCGM 100:2008, 5.1.3). Every part is 0 or more.
/// </summary>
/// <param name="Resolution">The gauge's step.</param>
/// <param name="Repeatability">Reading the same gate again.</param>
/// <param name="HeldAngle">The oar not held quite at its station.</param>
/// <param name="Level">The hull's level, both ways together; shared by the boat in that lie.</param>
/// <param name="GaugeZero">The gauge's zero; shared by all its readings.</param>
public readonly record struct UncertaintyBudget(
    double Resolution, double Repeatability, double HeldAngle, double Level, double GaugeZero)
{
    /// <summary>The combined variance in square degrees: the sum of squares (JCGM 100:2008, equation 10).</summary>
    public double Variance =>
        (Resolution * Resolution) + (Repeatability * Repeatability) + (HeldAngle * HeldAngle)
        + (Level * Level) + (GaugeZero * GaugeZero);

    /// <summary>The combined standard uncertainty in degrees: the root of the sum of squares.</summary>
    public double CombinedDegrees => Math.Sqrt(Variance);
}
