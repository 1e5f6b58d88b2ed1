using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>
/// What a gate is at a point where it was read: the reading with the hull's level and the gauge's zero taken out.
/// No belief about gates touches it.
/// </summary>
/// <param name="Gate">The gate.</param>
/// <param name="At">Where in the stroke.</param>
/// <param name="Pitch">The pitch on a level hull.</param>
/// <param name="Budget">Where its uncertainty comes from.</param>
/// <param name="Repeats">How many readings it is pooled from.</param>
/// <param name="RepeatsApart">
/// How far the two furthest apart differ, where that is more than their uncertainty allows; null where repeats agree.
/// </param>
public sealed record CorrectedPitch(
    GatePlace Gate, StrokePoint At, Pitch Pitch, UncertaintyBudget Budget, int Repeats, Estimate? RepeatsApart)
{
    /// <summary>Whether two of its readings differ by more than their uncertainty allows.</summary>
    public bool RepeatsDisagree => RepeatsApart is not null;

    /// <summary>Of repeats that disagree the lowest, by itself; null where they agree.</summary>
    public Estimate? Lowest { get; init; }

    /// <summary>The pitch with its standard uncertainty.</summary>
    public Estimate Estimate => new(Pitch.Angle, Angle.FromDegrees(Budget.CombinedDegrees));
}
