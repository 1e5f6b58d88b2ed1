namespace Gatewright.Core.Measuring;

/// <summary>The part of a reading's uncertainty that is its own and shared with no other reading.</summary>
public static class ReadingNoise
{
    /// <summary>The noise of a reading, part by part.</summary>
    /// <remarks>
    /// Resolution r enters as an even spread of width r, u = r/√12 (JCGM 100:2008, F.2.2.1); repeatability as it is;
    /// the angle at which the oar was held through the slope of pitch with oar angle, for a gate's face alone.
    /// </remarks>
    public static UncertaintyBudget Of(Reading reading, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(settings);
        return new(
            Resolution: reading.Gauge.Resolution.Degrees / Math.Sqrt(12),
            Repeatability: reading.Gauge.Repeatability.Degrees,
            HeldAngle: HeldAngle(reading, settings),
            Level: 0,
            GaugeZero: 0);
    }

    /// <summary>The variance of a reading's noise, in square degrees.</summary>
    public static double VarianceOf(Reading reading, MeasuringSettings settings) => Of(reading, settings).Variance;

    private static double HeldAngle(Reading reading, MeasuringSettings settings)
    {
        if (reading.Item != ReadItem.Gate)
        {
            return 0;
        }

        double u = (reading.At.Station == Station.Abeam ? settings.HeldAbeamU : settings.HeldAngleU).Radians;
        return settings.PitchDegreesPerRadianOfOar * u;
    }
}
