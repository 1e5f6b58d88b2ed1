using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>A figure with its standard uncertainty, both in degrees and rounded to 4 decimals.</summary>
/// <param name="Value">The best value.</param>
/// <param name="U">The standard uncertainty, 0 or more: one standard deviation, never an expanded one.</param>
public readonly record struct Quantity(double Value, double U)
{
    /// <summary>An estimate, rounded.</summary>
    public static Quantity Of(Estimate estimate) => new(Rounded.Degrees(estimate.Value), Rounded.Degrees(estimate.U));
}
