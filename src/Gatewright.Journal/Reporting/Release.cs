using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Reporting;

/// <summary>
/// What a release of a boat lifts: what whoever gives it has before them. What another device recorded earlier and shares later is not
/// among it, and keeps the boat ashore.
/// </summary>
/// <param name="Boat">The boat's key.</param>
/// <param name="Holds">The holds on it, oldest first.</param>
/// <param name="Damage">The damage told of it and not seen to, newest first.</param>
public sealed record Release(string Boat, IReadOnlyList<Recorded> Holds, IReadOnlyList<Incident> Damage)
{
    /// <summary>Whether there is nothing to lift.</summary>
    public bool IsEmpty => Holds.Count + Damage.Count == 0;

    /// <summary>The release of all that holds a boat, or is told to be broken on it.</summary>
    public static Release Of(BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return new(boat.Key, boat.Holds, [.. OpenReports.Of(boat).Where(told => told.Record.Fact is Noted)]);
    }

    /// <summary>What goes on record: one entry, or several where one may not name so many.</summary>
    /// <param name="reason">On what grounds.</param>
    public IReadOnlyList<Fact> Facts(string reason) =>
    [
        .. Holds.Concat(Damage.Select(told => told.Record))
            .Select(record => record.Entry.Id)
            .Chunk(EntryRules.MostItems)
            .Select(lifts => new Released(Boat, reason, lifts)),
    ];
}
