using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending.Options;

/// <summary>A new pin: it stands as its foot does, so it cures a bent pin and nothing else.</summary>
/// <param name="Target">How the pin is meant to stand.</param>
/// <param name="UDegrees">How well new pins stand so, each way.</param>
internal sealed record NewPinStep(PinLean Target, double UDegrees)
    : MendingStep(RemedyKind.ReplacePin, [new(PartKind.Pin, 0)], JobMinutes.ReplacePin)
{
    /// <inheritdoc/>
    public override Work Work => new Work.FitPin();

    /// <inheritdoc/>
    public override GateBelief Apply(GateBelief before, Cause? cause) => cause is Cause.Rigger or Cause.WrongSeat
        ? before
        : before.WithNew(1, Target.Aft.Degrees, UDegrees).WithNew(2, Target.Out.Degrees, UDegrees);

    /// <inheritdoc/>
    public override bool Mends(Cause cause) => cause is Cause.PinAft or Cause.PinOut;
}
