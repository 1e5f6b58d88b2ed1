using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>The stroke for programs; docs/check-format.md describes it.</summary>
/// <param name="Format">Always <c>gatewright.pitch/1</c>.</param>
/// <param name="Side"><c>port</c> or <c>starboard</c>.</param>
/// <param name="Rowing"><c>sweep</c> or <c>scull</c>.</param>
/// <param name="Lie"><c>upright</c> or <c>inverted</c>.</param>
/// <param name="Gate">Pitch built into gate and insert.</param>
/// <param name="PinAft">The pin's lean to the stern.</param>
/// <param name="PinOut">The pin's lean away from the hull.</param>
/// <param name="Sleeve">The oar's sleeve error.</param>
/// <param name="BowHigh">Rise to the bow, as the boat lies.</param>
/// <param name="PortLow">Roll to port, as the boat lies.</param>
/// <param name="Points">From catch to finish.</param>
internal sealed record PitchDocument(
    string Format,
    string Side,
    string Rowing,
    string Lie,
    double Gate,
    double PinAft,
    double PinOut,
    double Sleeve,
    double BowHigh,
    double PortLow,
    IReadOnlyList<PitchPoint> Points);

/// <summary>One point of the stroke; all in degrees, to 4 decimals.</summary>
/// <param name="At">The station's word, or null.</param>
/// <param name="Angle">The oar angle.</param>
/// <param name="Pitch">The gate's pitch on a level boat.</param>
/// <param name="Blade">The blade's pitch on a level boat.</param>
/// <param name="Upright">What a perfect gauge shows upright.</param>
/// <param name="Inverted">What a perfect gauge shows inverted.</param>
internal sealed record PitchPoint(
    string? At, double Angle, double Pitch, double Blade, double Upright, double Inverted);

/// <summary>Writes the document.</summary>
internal static class PitchJson
{
    public static string Of(StrokePitch pitch) => JsonSerializer.Serialize(
        new PitchDocument(
            "gatewright.pitch/1",
            pitch.Side.Word(),
            pitch.Rowing == Rowing.Sweep ? "sweep" : "scull",
            pitch.Lie.Word(),
            Four(pitch.Gate.GatePitch.Degrees),
            Four(pitch.Gate.Pin.Aft.Degrees),
            Four(pitch.Gate.Pin.Out.Degrees),
            Four(pitch.Sleeve.Degrees),
            Four(pitch.Hull.BowHigh.Degrees),
            Four(pitch.Hull.PortLow.Degrees),
            [.. pitch.Points().Select(point => Point(pitch, point))]),
        PitchJsonContext.Default.PitchDocument);

    private static PitchPoint Point(StrokePitch pitch, StrokePoint point) => new(
        point.Station?.Word(),
        Four(point.Angle.Degrees),
        Four(pitch.OnLevelHull(point.Angle).Degrees),
        Four(pitch.OfBlade(point.Angle).Degrees),
        Four(pitch.Shown(point.Angle, Core.Lie.Upright).Degrees),
        Four(pitch.Shown(point.Angle, Core.Lie.Inverted).Degrees));

    /// <summary>Adding 0 turns −0 into 0.</summary>
    private static double Four(double degrees) => Math.Round(degrees, 4, MidpointRounding.AwayFromZero) + 0.0;
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(PitchDocument))]
internal sealed partial class PitchJsonContext : JsonSerializerContext;
