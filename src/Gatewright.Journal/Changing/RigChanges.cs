using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Changing;

/// <summary>All changes of rigs that a club has planned and kept, whatever came of them, oldest first.</summary>
public static class RigChanges
{
    private static readonly string PlannedKind = FactKinds.NameOf<ChangePlanned>();

    /// <summary>Those of a club.</summary>
    public static IReadOnlyList<RigChange> Of(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        return [.. club.Subjects.Where(s => s.Thing == Things.Boat).SelectMany(s => Planned(club, s))
            .Order(RecordedOrder.Instance).Select(r => new RigChange(club, r))];
    }

    /// <summary>Those of a boat.</summary>
    public static IReadOnlyList<RigChange> Of(Club club, string boat)
    {
        ArgumentNullException.ThrowIfNull(club);
        return [.. Planned(club, Subject.Boat(boat)).Select(r => new RigChange(club, r))];
    }

    /// <summary>A change by its key; null where there is none.</summary>
    public static RigChange? Find(Club club, string job) => Of(club).FirstOrDefault(c => c.Plan.Job == job);

    /// <summary>Told by the kind of each entry: a long journal's other entries are not read for it.</summary>
    private static IEnumerable<Recorded> Planned(Club club, Subject boat) =>
        club.Everything(boat).Where(r => r.Entry.Kind == PlannedKind && r.Fact is ChangePlanned && !club.IsRetracted(r));
}
