using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending;

/// <summary>What the gauge should show at each station, once a gate is what it is to become.</summary>
internal static class ExpectedReadings
{
    /// <summary>Two-sided 95 % of the normal distribution.</summary>
    private const double Wide = 1.959964;

    public static IReadOnlyList<ExpectedReading> Of(GateBelief after, BoatCheck check, MendingSettings settings)
    {
        StationAngles angles = check.Settings.Diagnosing.Measuring.Angles(check.Readings.Class.Rowing);
        return [.. Stations.All.Select(station => One(after, angles.Point(station), settings))];
    }

    private static ExpectedReading One(GateBelief after, StrokePoint at, MendingSettings settings)
    {
        Pitch pitch = after.PitchAt(at.Angle);
        double variance = after.PitchVariance(at.Angle);
        double reach = Wide * Math.Sqrt(variance + Math.Pow(settings.RecheckU.Degrees, 2));
        return new(
            at,
            new(pitch.Angle, Angle.FromDegrees(Math.Sqrt(variance))),
            Pitch.FromDegrees(pitch.Degrees - reach),
            Pitch.FromDegrees(pitch.Degrees + reach));
    }
}
