using Gatewright.Core.Advising;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Simulating;

/// <summary>Takes the readings that are advised on a simulated boat.</summary>
public static class AdvisedReading
{
    /// <summary>The boat's readings with the one that was advised, as the reader finds it.</summary>
    public static BoatReadings Take(Reader reader, BoatReadings readings, ReadingChoice choice, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(choice);
        (Angle shown, Angle portLow) = Found(reader, choice);
        return ReadingTaken.On(readings, choice, shown, portLow, settings);
    }

    private static (Angle Shown, Angle PortLow) Found(Reader reader, ReadingChoice choice)
    {
        switch (choice.Item)
        {
            case NextItem.Level:
                HullAttitude level = ((HullLevel.Read)reader.Level().Level).Attitude;
                return (level.BowHigh.Angle, level.PortLow.Angle);
            case NextItem.GaugeReversed:
                return (reader.Reversed().Zero.Estimate.Value, default);
            case NextItem.Gate:
                return (reader.Gate(choice.Gate!.Value, choice.At!.Value.Station!.Value).Value, default);
            default:
                return (reader.Item(ReadingTaken.ItemOf(choice.Item), choice.Gate!.Value).Value, default);
        }
    }
}
