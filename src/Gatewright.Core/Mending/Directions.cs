using System.Globalization;

namespace Gatewright.Core.Mending;

/// <summary>
/// Amounts and directions in words that need no sign convention, and that hold whichever way up the boat lies: the top
/// of a pin is its tip, a bolt is nearer the keel or nearer the gunwale.
/// </summary>
internal static class Directions
{
    /// <summary>Where the top of a pin goes that is tilted so far to the stern.</summary>
    public static string Along(double aftDegrees) => aftDegrees > 0 ? "towards the stern" : "towards the bow";

    /// <summary>Where the top of a pin goes that is tilted so far away from the hull.</summary>
    public static string Across(double outDegrees) => outDegrees > 0 ? "away from the hull" : "towards the hull";

    /// <summary>
    /// The edge of the pin's foot that is raised to tilt the pin along the boat: the one from which its top goes away.
    /// </summary>
    public static string EdgeAlong(double aftDegrees) => aftDegrees > 0 ? "bow edge" : "stern edge";

    /// <summary>The same, across the boat.</summary>
    public static string EdgeAcross(double outDegrees) => outDegrees > 0 ? "edge nearer the hull" : "edge away from the hull";

    /// <summary>
    /// The bolt of the rigger's plate behind which washers tilt the pin across the boat: behind the lower one they lean it
    /// inward.
    /// </summary>
    public static string Bolt(double outDegrees) =>
        outDegrees > 0 ? "upper bolt, the one nearer the gunwale" : "lower bolt, the one nearer the keel";

    /// <summary>
    /// A backstay set so that the pin tilts along the boat. Most run from the top of the pin to the bow (common
    /// practice), some to the stern: the instruction is in where the pin goes, which is the same for both.
    /// </summary>
    /// <param name="aftDegrees">How far the pin is to tilt to the stern.</param>
    /// <param name="heightMm">From the pin's foot up to where the stay holds it.</param>
    public static string Backstay(double aftDegrees, double heightMm)
    {
        double mm = Math.Abs(Shim.ThicknessMm(Geometry.Angle.FromDegrees(aftDegrees), heightMm));
        (string toBow, string toStern) = aftDegrees > 0 ? ("longer", "shorter") : ("shorter", "longer");
        return $"Set the backstay until the pin, where the stay holds it, has come {Number(mm)} mm {Along(aftDegrees)}: "
            + $"{Number(Math.Abs(aftDegrees))}° over {Length(heightMm)}, measure yours. "
            + $"A stay that runs to the bow is made {toBow} for that, one that runs to the stern {toStern}. "
            + "Only where the stay can be set, and never by force.";
    }

    /// <summary>An amount to a tenth: "2.5".</summary>
    public static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>A length as it is set: "60 mm".</summary>
    public static string Length(double mm) => mm.ToString("0.#", CultureInfo.InvariantCulture) + " mm";
}
