using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending.Options;

/// <summary>The backstay set longer or shorter: the pin tilts along the boat from wherever it stands, and takes no part.</summary>
/// <remarks>
/// Most backstays run from the top of the pin to the bow (common practice), some to the stern: what is told is how far
/// the pin has to come, which is the same for both.
/// </remarks>
/// <param name="ToSternMm">How far the pin comes to the stern where the stay holds it; negative to the bow.</param>
/// <param name="Settings">The rig's lengths, and how well a tilt hits.</param>
internal sealed record BackstayStep(double ToSternMm, MendingSettings Settings)
    : MendingStep(RemedyKind.Backstay, [], JobMinutes.Backstay)
{
    /// <summary>A turn of a stay's thread is about so much, and finer it is not set, in millimetres.</summary>
    private const double StepMm = 0.5;

    /// <inheritdoc/>
    public override Work.SetStay Work => new(ToSternMm, AftDegrees, Settings.Dimensions.BackstayHeightMm);

    /// <summary>How far the pin tilts to the stern.</summary>
    public double AftDegrees => Shim.Tilt(ToSternMm, Settings.Dimensions.BackstayHeightMm).Degrees;

    /// <summary>The stay's setting that tilts the pin's top so far to the stern, as near as a stay can be set.</summary>
    /// <returns>Null when that is no change at all.</returns>
    public static BackstayStep? ToTilt(double aftDegrees, MendingSettings settings)
    {
        double toStern = Shim.ThicknessMm(Angle.FromDegrees(aftDegrees), settings.Dimensions.BackstayHeightMm);
        double set = StepMm * Math.Round(toStern / StepMm);
        return set == 0 ? null : new(set, settings);
    }

    /// <inheritdoc/>
    public override GateBelief Apply(GateBelief before, Cause? cause) => before.After(
        GateState.FromDegrees(0, AftDegrees, 0), GateState.FromDegrees(0, Settings.TiltU.Degrees, 0));

    /// <inheritdoc/>
    public override bool Mends(Cause cause) => cause is Cause.PinAft or Cause.Rigger;
}
