using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Changing;

/// <summary>The days on which something of a boat's rig was taken, and the boats it can be laid beside.</summary>
public static class RigDays
{
    /// <summary>The days, newest first.</summary>
    public static IReadOnlyList<DateOnly> Of(Club club, string boat)
    {
        ArgumentNullException.ThrowIfNull(club);
        var days = new SortedSet<DateOnly>();
        foreach (Recorded record in club.About(Subject.Boat(boat)))
        {
            if (record.Fact is MeasureTaken or BoatLaid)
            {
                days.Add(Day.Of(record));
            }
        }

        return [.. days.Reverse()];
    }

    /// <summary>The other boats in use that are rowed the same way, those of its class first, then by name.</summary>
    public static IReadOnlyList<BoatView> Beside(Club club, BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(boat);
        return [.. BoatView.All(club)
            .Where(b => b.Key != boat.Key && b.Class is { } other && other.Rowing == boat.Class?.Rowing && !b.IsOutOfUse)
            .OrderBy(b => b.Class == boat.Class ? 0 : 1).ThenBy(b => b.Name, StringComparer.OrdinalIgnoreCase)];
    }
}
