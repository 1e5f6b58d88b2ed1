using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>What a boat's readings are once a further one was taken, in the lying and with the gauge most used so far.</summary>
/// <remarks>
/// A level that was read takes the place of what was known of the level; a reversal takes the place of what was known
/// of the gauge's zero: all readings of that lying, or with that gauge, are then corrected by it.
/// </remarks>
public static class ReadingTaken
{
    /// <summary>The readings with one more.</summary>
    /// <param name="boat">The readings so far, at least one.</param>
    /// <param name="choice">What was read.</param>
    /// <param name="shown">What was found: the reading; of a level, bow high; of a reversal, the gauge's zero.</param>
    /// <param name="portLow">Of a level, port low as the boat lies.</param>
    /// <param name="settings">How well a reversal finds a zero.</param>
    public static BoatReadings On(
        BoatReadings boat, ReadingChoice choice, Angle shown, Angle portLow, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(settings);
        return choice.Item switch
        {
            NextItem.Level => Levelled(boat, UsualWay.Of(boat).Lie, new(new(shown), new(portLow))),
            NextItem.GaugeReversed => Reversed(boat, choice.Gauge!, new(new(shown, settings.CheckedGaugeZeroU), true)),
            _ => boat with { Readings = [.. boat.Readings, Further(boat, choice, shown, settings)] },
        };
    }

    internal static Reading Further(BoatReadings boat, ReadingChoice choice, Angle shown, MeasuringSettings settings)
    {
        UsualWay way = UsualWay.Of(boat);
        StrokePoint at = choice.At ?? settings.Angles(boat.Class.Rowing).Point(Station.Abeam);
        return new(ItemOf(choice.Item), choice.Gate!.Value, at, shown, way.Lie, way.Gauge);
    }

    private static BoatReadings Levelled(BoatReadings boat, BoatLie lie, HullAttitude attitude)
    {
        BoatLie levelled = lie with { Level = new HullLevel.Read(attitude) };
        return boat with { Readings = [.. boat.Readings.Select(r => r.Lie == lie ? r with { Lie = levelled } : r)] };
    }

    private static BoatReadings Reversed(BoatReadings boat, string gauge, GaugeZero zero) => boat with
    {
        Readings = [.. boat.Readings.Select(r =>
            r.Gauge.Name == gauge ? r with { Gauge = r.Gauge with { Zero = zero } } : r)],
    };

    internal static ReadItem ItemOf(NextItem item) => item switch
    {
        NextItem.PinAft => ReadItem.PinAft,
        NextItem.PinOut => ReadItem.PinOut,
        NextItem.GatePitch => ReadItem.GatePitch,
        NextItem.Sleeve => ReadItem.Sleeve,
        _ => ReadItem.Gate,
    };
}
