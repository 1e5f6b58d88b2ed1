using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>The day of an entry.</summary>
public static class Day
{
    /// <summary>The day a fact was true: the day it states, else the day it was recorded.</summary>
    public static DateOnly Of(Recorded record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Stated(record.Fact) ?? Of(record.Entry);
    }

    /// <summary>The day it was made, by universal time: the journal must be read alike everywhere, whatever zone a phone was set to.</summary>
    public static DateOnly Of(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return DateOnly.FromDateTime(entry.Time.Instant.UtcDateTime);
    }

    /// <summary>The day a fact states; null for none.</summary>
    internal static DateOnly? Stated(Fact fact) => fact switch
    {
        BoatLaid laid => laid.Date,
        RackLevelRead level => level.Date,
        Reported report => report.Date,
        GateMended mended => mended.Date,
        MeasureTaken measure => measure.Date,
        OarRead read => read.Date,
        MeasureSet set => set.Date,
        _ => null,
    };
}
