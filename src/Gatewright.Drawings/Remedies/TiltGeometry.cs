using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Drawings.Remedies;

/// <summary>
/// A pin seen square-on, either along the boat (standing outside of it: a port pin has the bow on the left) or across the
/// boat (from astern, looking to the bow: port on the left).
/// </summary>
/// <param name="Side">The side the gate stands on.</param>
/// <param name="IsAcross">Seen from astern, where leans to and from the hull show; else from outside, where those along the boat do.</param>
/// <param name="Exaggeration">How many times larger than true the leans are drawn; 1 is true.</param>
public sealed record TiltGeometry(Side Side, bool IsAcross, double Exaggeration = 1)
{
    /// <summary>How wide the drawing is.</summary>
    public const double Width = 260;

    /// <summary>How high the drawing is.</summary>
    public const double Height = 206;

    /// <summary>The foot of the pin, about which it tilts.</summary>
    public static Spot Foot => new(Width / 2, 132);

    /// <summary>From foot to tip.</summary>
    public const double Length = 96;

    /// <summary>
    /// −1 where the way that counts as positive, to the stern or away from the hull, is on the left: away from a port hull,
    /// to the stern of a starboard pin.
    /// </summary>
    public int Positive => IsAcross ? -Side.Sign() : Side.Sign();

    /// <summary>How far a lean is turned, as a clock turns.</summary>
    public double Turn(Angle lean) => Positive * Exaggeration * lean.Degrees;

    /// <summary>Drawn for a positive way on the right; this side as it is.</summary>
    public string Mirror => Positive > 0 ? "scale(1 1)" : "scale(-1 1)";

    /// <summary>
    /// How the pin stood before, and the rigger it is bolted to when shims go between the two: turned about the edge of the
    /// foot that stays down. Drawn for a positive way on the right.
    /// </summary>
    /// <param name="degrees">How far, as a clock turns.</param>
    public static string About(double degrees)
    {
        string edge = Svg.N(degrees < 0 ? HalfFoot : -HalfFoot);
        return $"rotate({Svg.Turn(degrees)} {edge} 0)";
    }

    /// <summary>Where the arms of the rigger meet what the pin stands on, when that is turned so.</summary>
    /// <param name="degrees">How far, as a clock turns.</param>
    public static Spot RiggerEnd(double degrees) =>
        new Spot(degrees < 0 ? HalfFoot : -HalfFoot, 0).Towards(degrees - 90, degrees < 0 ? HalfFoot + 30 : 30 - HalfFoot).Towards(degrees, -4);

    /// <summary>Half the width of the pin's foot.</summary>
    public const double HalfFoot = 22;

    /// <summary>How thick a shim is drawn that fills the gap under the other edge.</summary>
    /// <param name="degrees">The gap's angle.</param>
    public static double ShimHeight(double degrees) => 36 * Math.Tan(Math.Abs(degrees) * Math.PI / 180);

    /// <summary>A place so far along the positive way and down from the foot.</summary>
    public static Spot FromFoot(double x, double y) => Foot.Plus(x, y);
}
