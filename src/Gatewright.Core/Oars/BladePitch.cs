using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Oars;

/// <summary>The pitch of a blade: what the gate gives, and what the oar's sleeve adds, through the exact geometry.</summary>
public static class BladePitch
{
    /// <summary>The pitch of the blade in a gate whose state is known.</summary>
    public static Pitch At(OarAngle at, GateState gate, Side side, SleeveError sleeve) => PitchGeometry.At(at, gate, side, sleeve: sleeve);

    /// <summary>
    /// The pitch of the blade where the gate's was read: the reading, and what the sleeve adds in such a gate.
    /// </summary>
    /// <param name="read">The gate's pitch there on a level boat.</param>
    /// <param name="at">The oar angle.</param>
    /// <param name="gate">The gate as it is best known; its pitch there need not be what was read.</param>
    /// <param name="side">Its side.</param>
    /// <param name="sleeve">The sleeve error.</param>
    /// <param name="sleeveU">Its standard uncertainty, degrees.</param>
    /// <param name="gaugeU">The part of both uncertainties that is one gauge's zero, where one gauge read gate and sleeve: it counts twice over.</param>
    public static Estimate Of(Estimate read, OarAngle at, GateState gate, Side side, SleeveError sleeve, double sleeveU, double gaugeU = 0)
    {
        double added = At(at, gate, side, sleeve).Degrees - At(at, gate, side, default).Degrees;

        // u² + v² + 2 z²: what is shared adds up in the sum, whereas it drops out of a difference.
        double u = Math.Sqrt((read.U.Degrees * read.U.Degrees) + (sleeveU * sleeveU) + (2 * gaugeU * gaugeU));
        return Estimate.FromDegrees(read.Value.Degrees + added, u);
    }
}
