using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Words;

namespace Gatewright.Journal.Views;

/// <summary>One reading of a gate's face by itself: what was entered, and what it is with the boat's level and the gauge's zero taken out.</summary>
/// <param name="Entered">What was entered, degrees.</param>
/// <param name="Pitch">The pitch on a level boat, degrees.</param>
/// <param name="IsLevelOut">Whether a level that is not 0 was taken out.</param>
/// <param name="IsZeroOut">Whether a gauge's zero that is not 0 was taken out.</param>
public sealed record CorrectedFace(double Entered, double Pitch, bool IsLevelOut, bool IsZeroOut)
{
    /// <summary>What a reading comes to; null for one of no face, and where the boat's class or how it lay is not known.</summary>
    public static CorrectedFace? Of(BoatView boat, Recorded record, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(record);
        if (record.Fact is not ReadingTaken { Item: ReadItem.Gate } || boat.AsRead([record], settings) is not [{ } reading])
        {
            return null;
        }

        return new(
            reading.Value.Degrees,
            CorrectedReadings.Of([reading], settings).Pitches[0].Pitch.Degrees,
            LevelEstimate.Of(reading.Lie.Level, settings).Attitude != HullAttitude.Level,
            reading.Gauge.Zero.Estimate.Value.Degrees != 0);
    }

    /// <summary>Why a figure that rests on it is not the one that was entered; null where it shows alike.</summary>
    /// <param name="say">The language.</param>
    /// <param name="shown">The figure, degrees; null for this reading's own.</param>
    /// <param name="readings">How many readings the figure rests on.</param>
    public string? Why(Wording say, double? shown = null, int readings = 1)
    {
        ArgumentNullException.ThrowIfNull(say);
        return say.Levels.Entered(Entered, shown ?? Pitch, IsLevelOut, IsZeroOut, readings);
    }
}
