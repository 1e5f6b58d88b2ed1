using Gatewright.Core.Geometry;

namespace Gatewright.Core.Oars;

/// <summary>
/// The check of a sleeve on the gunwale: the blade lies flat along the gunwale, so that the hull stands for the blade, and
/// the gauge reads the sleeve's flat across the shaft.
/// </summary>
/// <remarks>
/// With the shaft abeam the blade's width lies along x, and the flat is turned from it about the shaft, y, by ε. Across the
/// shaft the flat runs along t = (cos ε, 0, sin ε), and the gauge shows asin(t·u). That is the pitch of a gate of ε on an
/// upright pin abeam, so that <see cref="PitchGeometry"/> gives it: shown = asin(cos ε sin β + sin ε √(1 − sin² β − sin² ρ)),
/// which with ρ = 0 is ε + β exactly. The rise of the keel line enters whole, the roll only as 1 − cos ρ: 0.004° of a sleeve
/// of 3° on a hull rolled by 3°. Laid across, or beside a boat turned over, the oar meets the same rise from its other side:
/// ε − β. Turning the oar over on the gunwale, hollow up or hollow down, changes nothing.
/// ε is positive when the blade's top leans further to the stern than the flat does. On a level upright boat with the
/// handle out such a flat rises to the bow.
/// </remarks>
public static class GunwaleCheck
{
    /// <summary>What a perfect gauge shows on the flat, in the oar's own sense.</summary>
    public static Angle Shown(SleeveError sleeve, HullAttitude hull, Lie lie, OarLaid laid)
    {
        // Abeam the side does not enter.
        var flat = new GateState(new(sleeve.Angle), PinLean.Upright);
        return PitchGeometry.At(default, flat, Side.Port, Met(hull, laid), lie).Angle;
    }

    /// <summary>The sleeve error that shows so: the boat's level taken out.</summary>
    public static SleeveError Of(Angle shown, HullAttitude hull, Lie lie, OarLaid laid) =>
        new(PitchGeometry.OnLevelHull(new(shown), default, Side.Port, Met(hull, laid), lie).Angle);

    /// <summary>How what is shown follows the keel line's rise to the bow: ±1.</summary>
    public static int RiseSlope(Lie lie, OarLaid laid) => lie.Sign() * laid.Sign();

    private static HullAttitude Met(HullAttitude hull, OarLaid laid) =>
        laid == OarLaid.HandleOut ? hull : new(new(-hull.BowHigh.Angle), new(-hull.PortLow.Angle));
}
