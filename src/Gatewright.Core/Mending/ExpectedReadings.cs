using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending;

/// <summary>What the gauge should show at each station, once a gate is what it is to become.</summary>
/// <remarks>
/// The re-check is taken with the gauge that was used and with the boat's level read: its uncertainty is that of the
/// gate itself and that of such a reading, level and zero taken off.
/// </remarks>
internal static class ExpectedReadings
{
    /// <summary>Two-sided 95 % of the normal distribution.</summary>
    private const double Wide = 1.959964;

    public static IReadOnlyList<ExpectedReading> Of(GateBelief after, BoatCheck check)
    {
        MeasuringSettings settings = check.Settings.Diagnosing.Measuring;
        StationAngles angles = settings.Angles(check.Readings.Class.Rowing);
        UsualWay way = UsualWay.Of(check.Readings);
        return [.. Stations.All.Select(station => One(after, angles.Point(station), way, settings))];
    }

    /// <summary>The variance of one re-check reading: all but the gate's own.</summary>
    public static double Variance(Reading reading, MeasuringSettings settings)
    {
        // Bow high enters by cos θ and port low by sin θ, each with the same u: together they are one u whole.
        double level = settings.LevelReadU.Degrees;
        double zero = reading.Gauge.Zero.Estimate.U.Degrees;
        return ReadingNoise.VarianceOf(reading, settings) + (level * level) + (zero * zero);
    }

    private static ExpectedReading One(GateBelief after, StrokePoint at, UsualWay way, MeasuringSettings settings)
    {
        var reading = new Reading(ReadItem.Gate, after.Gate, at, Angle.Zero, way.Lie, way.Gauge);
        Pitch pitch = after.PitchAt(at.Angle);
        double variance = after.PitchVariance(at.Angle);
        double reach = Wide * Math.Sqrt(variance + Variance(reading, settings));
        return new(
            at,
            new(pitch.Angle, Angle.FromDegrees(Math.Sqrt(variance))),
            Pitch.FromDegrees(pitch.Degrees - reach),
            Pitch.FromDegrees(pitch.Degrees + reach));
    }
}
