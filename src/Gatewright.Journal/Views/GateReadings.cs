using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What a reading of a gate still says.</summary>
public enum ReadingHolds
{
    /// <summary>The gate is judged by it.</summary>
    Counts,

    /// <summary>The gate was read on enough days since: it is history.</summary>
    Older,

    /// <summary>The gate was mended, knocked or refitted since: it says how the gate was.</summary>
    BeforeChange,

    /// <summary>How the boat lay for it is not known here yet.</summary>
    Waits,

    /// <summary>It was taken back.</summary>
    TakenBack,
}

/// <summary>A reading of a gate as the journal has it.</summary>
/// <param name="Record">The entry: who recorded it, when.</param>
/// <param name="Laid">How the boat lay; null while that is not known.</param>
/// <param name="Day">The day it was taken.</param>
/// <param name="Holds">What it still says.</param>
public sealed record GateReading(Recorded Record, BoatLaid? Laid, DateOnly Day, ReadingHolds Holds)
{
    /// <summary>What was read.</summary>
    public ReadingTaken Taken => (ReadingTaken)Record.Fact;
}

/// <summary>All readings of a gate: those that count, those that no longer do, and those taken back.</summary>
public static class GateReadings
{
    /// <summary>The readings of a gate, newest first.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boat">The boat.</param>
    /// <param name="gate">The gate.</param>
    /// <param name="daysCombined">Of how many days' readings of a gate are combined, 1 or more.</param>
    public static IReadOnlyList<GateReading> Of(Club club, BoatView boat, GatePlace gate, int daysCombined)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentOutOfRangeException.ThrowIfLessThan(daysCombined, 1);
        IReadOnlyCollection<Recorded> ever = club.Everything(Subject.Boat(boat.Key));
        var days = new BoatDays(ever.Except(boat.Records).Concat(boat.Records));
        Dictionary<string, BoatLaid> lyings = [];
        foreach (BoatLaid laid in ever.Select(r => r.Fact).OfType<BoatLaid>())
        {
            lyings[laid.Lying] = laid;
        }

        HashSet<string> holding = [.. boat.Records.Select(r => r.Fact).OfType<BoatLaid>().Select(l => l.Lying)];
        var changes = new GateChanges(boat);
        List<GateReading> all = [.. ever
            .Where(r => r.Fact is ReadingTaken taken && taken.Seat == gate.Seat && taken.Side == gate.Side)
            .Select(r => new GateReading(r, lyings.GetValueOrDefault(((ReadingTaken)r.Fact).Lying), days.Of(r), Holds(r)))];
        Dictionary<bool, DateOnly> first = all.Where(r => r.Holds == ReadingHolds.Counts)
            .GroupBy(IsOfTheOar)
            .ToDictionary(g => g.Key, g => g.Select(r => r.Day).Distinct().OrderDescending().Take(daysCombined).Last());
        return [.. all
            .Select(r => r.Holds == ReadingHolds.Counts && r.Day < first[IsOfTheOar(r)] ? r with { Holds = ReadingHolds.Older } : r)
            .OrderByDescending(r => r.Record, days)];

        ReadingHolds Holds(Recorded record) =>
            club.IsRetracted(record) ? ReadingHolds.TakenBack
            : changes.AreAfter(record) ? ReadingHolds.BeforeChange
            : holding.Contains(((ReadingTaken)record.Fact).Lying) ? ReadingHolds.Counts
            : ReadingHolds.Waits;
    }

    /// <summary>A sleeve is the oar's: no mending of the gate makes its readings old.</summary>
    private static bool IsOfTheOar(GateReading reading) => reading.Taken.Item == ReadItem.Sleeve;
}
