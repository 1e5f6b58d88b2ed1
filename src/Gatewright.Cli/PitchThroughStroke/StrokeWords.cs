using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>What is said beside the figures.</summary>
internal static class StrokeWords
{
    /// <summary>"A port gate, sweep: 4.0° built in; its pin leans 0.0° aft and 1.0° out."</summary>
    public static string Gate(StrokePitch pitch) =>
        $"A {pitch.Side.Word()} gate, {(pitch.Rowing == Rowing.Sweep ? "sweep" : "scull")}: "
        + $"{Two(pitch.Gate.GatePitch.Degrees)}° built in; its pin leans "
        + $"{Lean(pitch.Gate.Pin.Aft.Degrees, "aft", "forward")} and {Lean(pitch.Gate.Pin.Out.Degrees, "out", "in")}.";

    /// <summary>How the boat lies, and what that does to a reading.</summary>
    public static string Lying(StrokePitch pitch) => pitch.Hull == HullAttitude.Level
        ? "The boat lies level, so a perfect gauge shows the pitch itself, upright as inverted."
        : $"The boat lies {Lean(pitch.Hull.BowHigh.Degrees, "bow high", "bow low")} and "
            + $"{Lean(pitch.Hull.PortLow.Degrees, "port low", "starboard low")}. Turned over and lying with the same "
            + "figures, it shows the error with the other sign; the mean of the two readings is nearly the pitch.";

    /// <summary>What one may be told wrongly of a pin that leans out.</summary>
    public static string LeanOut(StrokePitch pitch)
    {
        (double lean, double atCatch) = pitch.OfLeanOut(pitch.Stations.Catch);
        (_, double atFinish) = pitch.OfLeanOut(pitch.Stations.Finish);
        string which = pitch.Gate.Pin.Out.Degrees == 0 ? $"{Two(lean)}° of lean out would make" : $"{Lean(lean, "out", "in")} makes";
        return $"One degree of lean out is not one degree of pitch at the catch: it counts by the sine of the oar's angle. "
            + $"Here {which} {Signed(atCatch)}° at {Figures.Short(pitch.Stations.Catch.Angle)}° "
            + $"and {Signed(atFinish)}° at {Figures.Short(pitch.Stations.Finish.Angle)}°, and abeam next to nothing. "
            + "Lean aft counts by the cosine: whole abeam, less at either end.";
    }

    /// <summary>Where the figures come from.</summary>
    public const string Source =
        "Source: geometry, ours. The pin carries the face by the smallest rotation from upright to where it stands; the "
        + "figures are exact, sine and cosine their first order.";

    /// <summary>What the band is.</summary>
    public const string Band = "Limits hold at the stations; between them they are drawn straight.";

    public static string Two(double degrees) => Figures.Degrees(degrees, 2);

    private static string Signed(double degrees) => (degrees >= 0 ? "+" : string.Empty) + Two(degrees);

    private static string Lean(double degrees, string positive, string negative) =>
        $"{Two(Math.Abs(degrees))}° {(degrees >= 0 ? positive : negative)}";
}
