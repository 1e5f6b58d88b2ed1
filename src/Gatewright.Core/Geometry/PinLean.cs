namespace Gatewright.Core.Geometry;

/// <summary>How a pin leans: to the stern and away from the hull, each as seen square-on.</summary>
/// <remarks>The two are slopes of one axis, not successive rotations: p ∝ (−tan a, σ tan o, 1).</remarks>
/// <param name="Aft">Lean to the stern.</param>
/// <param name="Out">Lean away from the hull.</param>
public readonly record struct PinLean(LeanAft Aft, LeanOut Out)
{
    /// <summary>A pin that is upright both ways.</summary>
    public static PinLean Upright => default;

    /// <summary>A lean of so many degrees aft and out.</summary>
    public static PinLean FromDegrees(double aft, double @out) =>
        new(LeanAft.FromDegrees(aft), LeanOut.FromDegrees(@out));
}
