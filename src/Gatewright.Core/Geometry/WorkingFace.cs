namespace Gatewright.Core.Geometry;

/// <summary>The flat of the gate that the oar's sleeve bears on, as a direction in the hull's frame.</summary>
public static class WorkingFace
{
    /// <summary>
    /// n: the drive-side normal of the working face, or of the blade when a sleeve error is given.
    /// </summary>
    /// <remarks>
    /// With an upright pin n₀ = cos γ · d − sin γ · ẑ, d(θ) = (−cos θ, σ sin θ, 0) being the direction of the drive;
    /// the pin's axis p ∝ (−tan a, σ tan o, 1) then carries it by the smallest rotation that takes ẑ to p. Smallest,
    /// because a leaning pin tips the gate without turning it: the oar's angle stays what the rower holds.
    /// </remarks>
    /// <returns>A vector of length 1.</returns>
    public static Vector3 Normal(OarAngle at, GateState gate, Side side, SleeveError sleeve = default)
    {
        (double sinAt, double cosAt) = Math.SinCos(at.Angle.Radians);
        (double sinFace, double cosFace) = Math.SinCos((gate.GatePitch.Angle + sleeve.Angle).Radians);
        int sigma = side.Sign();
        var upright = new Vector3(-cosFace * cosAt, sigma * cosFace * sinAt, -sinFace);
        return Rotation.FromUpTo(PinAxis(gate.Pin, side)).Apply(upright);
    }

    /// <summary>p ∝ (−tan a, σ tan o, 1): the pin's axis, foot to top, of no particular length.</summary>
    internal static Vector3 PinAxis(PinLean pin, Side side) => new(
        -Math.Tan(pin.Aft.Angle.Radians),
        side.Sign() * Math.Tan(pin.Out.Angle.Radians),
        1);
}
