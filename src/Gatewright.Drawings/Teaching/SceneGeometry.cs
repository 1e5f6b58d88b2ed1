using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Drawings.Teaching;

/// <summary>
/// One gate with its oar at one moment, exactly: what stands how far from plumb as one looks along the shaft at the hull,
/// and across the boat from astern. Positive leans to the stern, or away from the hull.
/// </summary>
/// <param name="Gate">Gate pitch and the pin's leans in the hull.</param>
/// <param name="Side">The side the gate stands on.</param>
/// <param name="At">Where the oar is in the stroke.</param>
/// <param name="Hull">How the hull lies against plumb.</param>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Sleeve">The oar's sleeve error.</param>
public sealed record SceneGeometry(
    GateState Gate, Side Side, OarAngle At, HullAttitude Hull = default, Lie Lie = Lie.Upright, SleeveError Sleeve = default)
{
    /// <summary>What a perfect gauge shows on the working face.</summary>
    public Pitch Face => PitchGeometry.At(At, Gate, Side, Hull, Lie);

    /// <summary>What the blade has.</summary>
    public Pitch Blade => PitchGeometry.At(At, Gate, Side, Hull, Lie, Sleeve);

    /// <summary>
    /// How the pin leans as one looks along the shaft: the pitch of a face without any pitch of its own on that pin. Its
    /// normal is square to the pin, so the two lean alike.
    /// </summary>
    public Pitch Pin => PitchGeometry.At(At, Gate with { GatePitch = default }, Side, Hull, Lie);

    /// <summary>
    /// The pin's lean away from the hull as one sees it from astern, the hull's roll with it. The two add in that view, for
    /// both turn about the line of sight; the bow's height, which turns it, is left out of the picture.
    /// </summary>
    public Angle PinAcross => Gate.Pin.Out.Angle + Roll;

    /// <summary>How far the hull's roll takes the top of this side's pin away from the hull: a side that is low leans out.</summary>
    public Angle Roll => Side.Sign() * Lie.Sign() * Hull.PortLow.Angle;
}
