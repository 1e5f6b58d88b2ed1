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
        return Of(reading.Gauge, reading.Item, reading.At.Station, settings);
    }

    /// <summary>The noise of a gauge held against something at a station, or elsewhere in the stroke.</summary>
    public static UncertaintyBudget Of(Gauge gauge, ReadItem item, Station? station, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(settings);
        return new(
            Resolution: gauge.Resolution.Degrees / Math.Sqrt(12),
            Repeatability: gauge.Repeatability.Degrees,
            HeldAngle: HeldAngle(item, station, settings),
            Level: 0,
            GaugeZero: 0);
    }

    /// <summary>The variance of a reading's noise, in square degrees.</summary>
    public static double VarianceOf(Reading reading, MeasuringSettings settings) => Of(reading, settings).Variance;

    private static double HeldAngle(ReadItem item, Station? station, MeasuringSettings settings)
    {
        if (item != ReadItem.Gate)
        {
            return 0;
        }

        double u = (station == Station.Abeam ? settings.HeldAbeamU : settings.HeldAngleU).Radians;
        return settings.PitchDegreesPerRadianOfOar * u;
    }
}
