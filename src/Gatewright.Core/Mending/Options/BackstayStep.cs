using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending.Options;

/// <summary>The backstay made longer or shorter: the pin tilts along the boat from wherever it stands, and takes no part.</summary>
/// <param name="LongerMm">By how much; negative for shorter.</param>
/// <param name="Settings">The rig's lengths, and how well a tilt hits.</param>
internal sealed record BackstayStep(double LongerMm, MendingSettings Settings)
    : MendingStep(RemedyKind.Backstay, [], JobMinutes.Backstay)
{
    /// <summary>A turn of a stay's thread is about so much, and finer it is not set, in millimetres.</summary>
    private const double StepMm = 0.5;

    /// <inheritdoc/>
    public override string Words => LongerMm > 0
        ? $"Make the backstay {Number(LongerMm)} mm longer: the top of the pin goes {Number(-AftDegrees)}° towards the bow."
        : $"Make the backstay {Number(-LongerMm)} mm shorter: the top of the pin goes {Number(AftDegrees)}° towards the stern.";

    private double AftDegrees => -Shim.Tilt(LongerMm, Settings.Dimensions.BackstayHeightMm).Degrees;

    /// <summary>The stay's change that tilts the pin's top so far to the stern, as near as a stay can be set.</summary>
    /// <returns>Null when that is no change at all.</returns>
    public static BackstayStep? ToTilt(double aftDegrees, MendingSettings settings)
    {
        double longer = -Shim.ThicknessMm(Angle.FromDegrees(aftDegrees), settings.Dimensions.BackstayHeightMm);
        double set = StepMm * Math.Round(longer / StepMm);
        return set == 0 ? null : new(set, settings);
    }

    /// <inheritdoc/>
    public override GateBelief Apply(GateBelief before, Cause? cause) => before.After(
        GateState.FromDegrees(0, AftDegrees, 0), GateState.FromDegrees(0, Settings.TiltU.Degrees, 0));

    /// <inheritdoc/>
    public override bool Mends(Cause cause) => cause is Cause.PinAft or Cause.Rigger;
}
