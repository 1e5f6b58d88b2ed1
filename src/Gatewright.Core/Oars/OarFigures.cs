using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Oars;

/// <summary>Makes figures of what was read or stated of an oar.</summary>
/// <param name="measuring">What is known of gauges and levels.</param>
/// <param name="errors">What oars add.</param>
public sealed class OarFigures(MeasuringSettings measuring, OarErrors errors)
{
    /// <summary>By the usual numbers.</summary>
    public static OarFigures Default { get; } = new(MeasuringSettings.Default, OarErrors.Default);

    /// <summary>
    /// The sleeve error from readings of one occasion: their mean, each with the boat's level and the gauge's zero taken out.
    /// </summary>
    /// <param name="readings">The readings, of one session, with one gauge, laid one way.</param>
    /// <param name="blade">The blade's shape: what blades of one shape have in common is shared.</param>
    /// <exception cref="ArgumentException">There are none.</exception>
    public OarFigure Sleeve(IReadOnlyList<SleeveReading> readings, string? blade)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count == 0)
        {
            throw new ArgumentException("No readings tell of no sleeve.", nameof(readings));
        }

        SleeveReading first = readings[0];
        LevelEstimate level = LevelEstimate.Of(first.Session.Lie.Level, measuring);
        Estimate zero = first.Gauge.Zero.Estimate;
        double sum = 0;
        foreach (SleeveReading reading in readings)
        {
            sum += GunwaleCheck.Of(reading.Shown - zero.Value, level.Attitude, first.Session.Lie.Lie, first.Laid).Angle.Degrees;
        }

        // Read again the oar is laid again; the gauge's step is met anew each time.
        double once = (Square(errors.PlacingU) + ReadingNoise.Of(first.Gauge, ReadItem.Sleeve, null, measuring).Variance) / readings.Count;

        // As for a gate: what is shown is too high by these, what is corrected errs by their opposites; the sign drops out.
        int rise = GunwaleCheck.RiseSlope(first.Session.Lie.Lie, first.Laid);
        return new(
            sum / readings.Count,
            Math.Sqrt(once),
            [
                new("level/" + first.Session.Key, -rise, level.U.Degrees),
                new(ZeroOf(first.Gauge.Name), -1, zero.U.Degrees),
                new("blade/" + blade, 1, errors.ShapeU),
            ],
            first.Session.Lie.Date);
    }

    /// <summary>A length or an inboard from what a tape showed on one day, in centimetres.</summary>
    /// <param name="item">Which.</param>
    /// <param name="centimetres">What was read, once or oftener.</param>
    /// <param name="day">The day: a day's lengths share the tape's zero. Null for what was stated.</param>
    public static OarFigure Length(OarItem item, IReadOnlyList<double> centimetres, DateOnly? day)
    {
        ArgumentNullException.ThrowIfNull(centimetres);
        RigErrors usual = OarErrors.Tape(item);
        return new(
            Mean(centimetres), usual.Own / Math.Sqrt(centimetres.Count), [new(FormattableString.Invariant($"tape/{day:yyyyMMdd}"), 1, usual.Tape)], day);
    }

    /// <summary>A weight, in kilograms.</summary>
    public OarFigure Weight(IReadOnlyList<double> kilograms, DateOnly? day)
    {
        ArgumentNullException.ThrowIfNull(kilograms);
        return new(Mean(kilograms), errors.WeightU / Math.Sqrt(kilograms.Count), [], day);
    }

    /// <summary>The key of a gauge's zero among shared errors.</summary>
    internal static string ZeroOf(string gauge) => "gauge/" + gauge;

    private static double Mean(IReadOnlyList<double> values)
    {
        double sum = 0;
        for (int i = 0; i < values.Count; i++)
        {
            sum += values[i];
        }

        return sum / values.Count;
    }

    private static double Square(double x) => x * x;
}
