using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;

namespace Gatewright.Drawings.Gates;

/// <summary>
/// A gate as one sees it standing outside of it and looking along the shaft at the hull: a port gate has the bow on the
/// left, a starboard gate on the right. Angles are true unless an exaggeration is asked for.
/// </summary>
/// <param name="Side">The side the gate stands on.</param>
/// <param name="Exaggeration">How many times larger than true every angle is drawn; 1 is true.</param>
public sealed record GateSideGeometry(Side Side, double Exaggeration = 1)
{
    /// <summary>How wide the drawing is.</summary>
    public const double Width = 300;

    /// <summary>How high the drawing is.</summary>
    public const double Height = 340;

    /// <summary>From the shaft's middle to the scale of degrees.</summary>
    public const double Radius = 170;

    /// <summary>The middle of the shaft, about which all of it leans.</summary>
    public static Spot Middle => new(Width / 2, 196);

    /// <summary>+1 where the stern is on the right.</summary>
    public int Sternward => Side.Sign();

    /// <summary>How far something that leans so far to the stern is turned, as a clock turns.</summary>
    public double Turn(Angle lean) => Sternward * Exaggeration * lean.Degrees;

    /// <summary>A place on the scale, so many units beyond it.</summary>
    public Spot OnScale(Angle lean, double beyond = 0) => Middle.Towards(Turn(lean), Radius + beyond);

    /// <summary>What lies inside the limits, from above the blade's tip to the scale.</summary>
    public string Wedge(StationLimits limits) => new Outline()
        .Move(OnScale(limits.Lowest.Angle, -64))
        .Line(OnScale(limits.Lowest.Angle))
        .Round(Radius, Sternward > 0, OnScale(limits.Highest.Angle))
        .Line(OnScale(limits.Highest.Angle, -64))
        .Close()
        .ToString();

    /// <summary>The degrees that have a line on the scale.</summary>
    public IEnumerable<int> Degrees => Exaggeration < 3 ? Enumerable.Range(-3, 14) : Enumerable.Range(-1, 9);

    /// <summary>A line of the scale; those of 0 and 5 are longer.</summary>
    public (Spot From, Spot To) Tick(int degrees)
    {
        var lean = Angle.FromDegrees(degrees);
        return (OnScale(lean), OnScale(lean, degrees % 5 == 0 ? 9 : 5));
    }

    /// <summary>A place on the stern's side of the drawing.</summary>
    public Spot Sternwards(double x, double y) => new(Middle.X + (Sternward * x), y);

    /// <summary>What text at such a place begins with: "start" where the stern is on the right.</summary>
    public string Anchor(bool towardsStern) => (Sternward > 0) == towardsStern ? "start" : "end";

    /// <summary>A path drawn for a stern on the right, as this side has it.</summary>
    public string Mirror => Sternward > 0 ? "scale(1 1)" : "scale(-1 1)";
}
