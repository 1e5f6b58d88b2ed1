using Gatewright.Core.Measuring;

namespace Gatewright.Core.Diagnosing;

/// <summary>What one gate probably is, and what is probably wrong with it, averaged over all stories.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="GatePitch">The pitch built into gate and insert.</param>
/// <param name="LeanAft">The pin's lean to the stern.</param>
/// <param name="LeanOut">The pin's lean away from the hull.</param>
/// <param name="Causes">Every cause it can have and "none", most probable first; they sum to 1.</param>
public sealed record GateDiagnosis(
    GatePlace Gate, Estimate GatePitch, Estimate LeanAft, Estimate LeanOut, IReadOnlyList<CauseProbability> Causes)
{
    /// <summary>The probability that anything is wrong with this gate.</summary>
    public double Wrong => Math.Min(1, Causes.Where(c => c.Cause is not null).Sum(c => c.Probability));
}
