using System.Globalization;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>A point of the stroke at which a gate is read: an oar angle, and the station it is, if it is one.</summary>
/// <param name="Angle">The oar angle meant.</param>
/// <param name="Station">The station, or null for an angle of its own.</param>
public readonly record struct StrokePoint(OarAngle Angle, Station? Station)
{
    /// <summary>The station's word, or the angle: "catch", "20°".</summary>
    public override string ToString() =>
        Station?.Word() ?? Angle.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°";

    /// <summary>For a sentence: "at the catch", "at 20° from abeam".</summary>
    public string Phrase() => Station?.Phrase() ?? $"at {this} from abeam";
}
