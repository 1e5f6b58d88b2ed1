namespace Gatewright.Core.Stroke;

/// <summary>
/// An oar turning about its pin, seen from above, in centimetres: "stern" from the line through the pins to the stern, "out"
/// from the keel line to the oar's own side.
/// </summary>
/// <remarks>Angles in radians: 0 abeam, positive to the catch, when the handle is at the stern and the blade at the bow.</remarks>
/// <param name="ToPin">From the keel line out to the pin.</param>
/// <param name="ToEnd">From the pin to the handle's end.</param>
/// <param name="ToHands">From the pin to the middle of the hands.</param>
/// <param name="ToTip">From the pin to the blade's tip.</param>
/// <param name="ToBlade">From the pin to where the water acts on the blade.</param>
public readonly record struct OarCircle(double ToPin, double ToEnd, double ToHands, double ToTip, double ToBlade)
{
    /// <summary>The oar of a seat's rig.</summary>
    public static OarCircle Of(SeatRig rig, OarPoints points)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(points);
        double half = points.GateWidth.Centimetres / 2;
        double end = rig.Inboard.Centimetres + half;
        double tip = rig.Outboard.Centimetres - half;
        return new(rig.ToPin.Centimetres, end, end - points.Grip.Centimetres, tip, tip - points.BladeMiddle.Centimetres);
    }

    /// <summary>The place of a point of the handle, so far from the pin.</summary>
    public (double Stern, double Out) Inboard(double fromPin, double radians) =>
        (fromPin * Math.Sin(radians), ToPin - (fromPin * Math.Cos(radians)));

    /// <summary>The place of a point of the shaft or blade, so far from the pin.</summary>
    public (double Stern, double Out) Outboard(double fromPin, double radians) =>
        (-fromPin * Math.Sin(radians), ToPin + (fromPin * Math.Cos(radians)));
}
