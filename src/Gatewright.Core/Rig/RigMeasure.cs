namespace Gatewright.Core.Rig;

/// <summary>
/// A measure of the rig other than the angles that a pitch gauge reads; those are <see cref="Measuring.ReadItem"/>s.
/// </summary>
public enum RigMeasure
{
    /// <summary>Sweep: from the keel line to the pin's centre, at the pin's base. Centimetres; one a seat.</summary>
    Spread,

    /// <summary>Scull: from pin's centre to pin's centre, at the pins' bases. Centimetres; one a seat.</summary>
    Span,

    /// <summary>From the lowest point of the seat up to the sill of the gate. Centimetres; one a gate.</summary>
    Height,

    /// <summary>From the handle's end to the face of the collar that bears on the gate. Centimetres; one an oar.</summary>
    Inboard,

    /// <summary>From the handle's end to the blade's tip, along the shaft. Centimetres; one an oar.</summary>
    OarLength,

    /// <summary>How far the handles overlap, or in sweep reach beyond the keel line. Centimetres; one a seat.</summary>
    Overlap,

    /// <summary>The footplate against the horizontal. Degrees; one a seat.</summary>
    StretcherAngle,

    /// <summary>From the bottom of the heel cups up to the seat's lowest point. Centimetres; one a seat.</summary>
    HeelDepth,

    /// <summary>How far the seat's front edge at full slide passes the line through the pins, to the stern. Centimetres; one a seat.</summary>
    WorkThrough,

    /// <summary>The front stop of the track, from the line through the pins; plus to the stern. Centimetres; one a seat.</summary>
    TrackPosition,
}
