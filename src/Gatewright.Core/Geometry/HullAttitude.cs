namespace Gatewright.Core.Geometry;

/// <summary>How a hull lies against plumb: along its keel and across it, as the boat lies.</summary>
/// <param name="BowHigh">Rise to the bow.</param>
/// <param name="PortLow">Roll to port.</param>
public readonly record struct HullAttitude(BowHigh BowHigh, PortLow PortLow)
{
    /// <summary>A hull that lies level both ways.</summary>
    public static HullAttitude Level => default;

    /// <summary>A hull so many degrees bow high and port low.</summary>
    public static HullAttitude FromDegrees(double bowHigh, double portLow) =>
        new(BowHigh.FromDegrees(bowHigh), PortLow.FromDegrees(portLow));
}
