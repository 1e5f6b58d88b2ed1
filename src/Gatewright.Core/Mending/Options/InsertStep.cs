using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Mending.Options;

/// <summary>Another insert: the pitch built into the gate is then what its stamp says, whatever it was.</summary>
/// <param name="Degrees">The stamp.</param>
/// <param name="UDegrees">How well inserts give it.</param>
internal sealed record InsertStep(double Degrees, double UDegrees)
    : MendingStep(RemedyKind.InsertSwap, [new(PartKind.Insert, Degrees)], JobMinutes.InsertSwap)
{
    /// <inheritdoc/>
    public override Work Work => new Work.FitInsert(Degrees);

    /// <inheritdoc/>
    public override GateBelief Apply(GateBelief before, Cause? cause) => before.WithNew(0, Degrees, UDegrees);

    /// <inheritdoc/>
    public override bool Mends(Cause cause) => cause == Cause.GatePitch;
}
