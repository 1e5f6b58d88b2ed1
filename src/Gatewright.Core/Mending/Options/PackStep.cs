using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending.Options;

/// <summary>Shims under the pin's foot, or washers behind the rigger's plate: the pin tilts from wherever it stands.</summary>
/// <param name="Way">Where they go.</param>
/// <param name="Pack">The shims or washers.</param>
/// <param name="Settings">The rig's lengths, and how well a tilt hits.</param>
internal sealed record PackStep(TiltWay Way, ShimPack Pack, MendingSettings Settings) : MendingStep(
    Way.IsAtThePlate() ? RemedyKind.PlateWasher : RemedyKind.PinFootShim,
    [.. Pack.ThicknessesMm.Select(t => new Part(Way.IsAtThePlate() ? PartKind.Washer : PartKind.Shim, t))],
    Way.IsAtThePlate() ? JobMinutes.PlateWasher : JobMinutes.PinFootShim)
{
    /// <inheritdoc/>
    public override Work.Pack Work => new(Way, Pack, Degrees, BaseMm);

    private double BaseMm => Way.IsAtThePlate() ? Settings.Dimensions.PlateBoltsMm : Settings.Dimensions.PinFootMm;

    /// <summary>How far the pin tilts, whichever way.</summary>
    public double Degrees => Shim.Tilt(Pack.TotalMm, BaseMm).Degrees;

    /// <inheritdoc/>
    public override GateBelief Apply(GateBelief before, Cause? cause) =>
        before.After(Tilt(Way.Sign() * Degrees), Tilt(Settings.TiltU.Degrees));

    /// <inheritdoc/>
    public override bool Mends(Cause cause) =>
        cause == Cause.Rigger || cause == (Way.IsAlong() ? Cause.PinAft : Cause.PinOut);

    private GateState Tilt(double degrees) =>
        Way.IsAlong() ? GateState.FromDegrees(0, degrees, 0) : GateState.FromDegrees(0, 0, degrees);
}
