using System.Globalization;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Mending.Options;

/// <summary>Another insert: the pitch built into the gate is then what its stamp says, whatever it was.</summary>
/// <param name="Degrees">The stamp.</param>
/// <param name="UDegrees">How well inserts give it.</param>
internal sealed record InsertStep(double Degrees, double UDegrees)
    : MendingStep(RemedyKind.InsertSwap, [new(PartKind.Insert, Degrees)], JobMinutes.InsertSwap)
{
    /// <inheritdoc/>
    public override string Words => string.Create(
        CultureInfo.InvariantCulture,
        $"Fit an insert that gives {Degrees:0.##}°. Look at the old one: worn, cracked, upside down or the wrong stamp.");

    /// <inheritdoc/>
    public override GateBelief Apply(GateBelief before, Cause? cause) => before.WithNew(0, Degrees, UDegrees);

    /// <inheritdoc/>
    public override bool Mends(Cause cause) => cause == Cause.GatePitch;
}
