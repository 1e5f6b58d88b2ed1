namespace Gatewright.Core.Geometry;

/// <summary>
/// How a gate's reading follows small changes of its causes: the Jacobian of the pitch about an upright pin on a
/// level hull, which is the first-order form of the geometry.
/// </summary>
/// <remarks>
/// pitch ≈ γ + a cos θ + o sin θ ± (β cos θ + σ ρ sin θ) + ε, plus upright, minus inverted. Within leans of 3°,
/// tilts of 1°, gate pitches of 7° and oar angles from −50° to 70° it is within 0.04° of <see cref="PitchGeometry"/>
/// (largest found 0.0355°, with all of them at their ends at once): good enough to infer with, while what is shown is
/// exact. All slopes are degrees of pitch a degree of cause.
/// </remarks>
/// <param name="Aft">cos θ, for the pin's lean aft.</param>
/// <param name="Out">sin θ, for the pin's lean out.</param>
/// <param name="BowHigh">± cos θ, for the hull's rise to the bow.</param>
/// <param name="PortLow">± σ sin θ, for the hull's roll to port.</param>
public readonly record struct PitchSlopes(double Aft, double Out, double BowHigh, double PortLow)
{
    /// <summary>The slopes for a gate of one side, read at an oar angle with the boat lying so.</summary>
    public static PitchSlopes At(OarAngle at, Side side, Lie lie)
    {
        (double sine, double cosine) = Math.SinCos(at.Angle.Radians);
        return new(cosine, sine, lie.Sign() * cosine, lie.Sign() * side.Sign() * sine);
    }

    /// <summary>The first-order pitch itself. The slopes for gate pitch and sleeve error are 1.</summary>
    public Pitch Pitch(GateState gate, HullAttitude hull = default, SleeveError sleeve = default) =>
        new(gate.GatePitch.Angle
            + (Aft * gate.Pin.Aft.Angle)
            + (Out * gate.Pin.Out.Angle)
            + (BowHigh * hull.BowHigh.Angle)
            + (PortLow * hull.PortLow.Angle)
            + sleeve.Angle);
}
