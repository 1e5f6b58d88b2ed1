using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>How the chance of a report follows a pitch or a difference of pitches.</summary>
/// <param name="ThresholdDegrees">Where the chance is half-way.</param>
/// <param name="WidthDegrees">The standard deviation of the rise.</param>
/// <param name="Base">The chance far from trouble.</param>
/// <param name="Peak">The chance deep in trouble.</param>
public sealed record ReportCurve(double ThresholdDegrees, double WidthDegrees, double Base, double Peak)
{
    /// <exception cref="ArgumentException">Its base or its peak is not a chance.</exception>
    internal void Check(ReportKind kind)
    {
        Chance.Checked(Base, kind.Code());
        Chance.Checked(Peak, kind.Code());
    }

    /// <summary>
    /// The chance averaged over a normal quantity, rising as the quantity exceeds the threshold:
    /// E[Φ((x − t)/w)] = Φ((m − t)/√(w² + v)) for x ~ N(m, v) (Owen, A table of normal integrals, Communications in
    /// Statistics B9, 1980).
    /// </summary>
    internal double Above(double mean, double variance) =>
        Base + ((Peak - Base)
            * Normal.Cdf((mean - ThresholdDegrees) / Math.Sqrt((WidthDegrees * WidthDegrees) + variance)));

    /// <summary>The same, rising as the quantity falls below the threshold.</summary>
    internal double Below(double mean, double variance) =>
        Base + Peak - Above(mean, variance);
}
