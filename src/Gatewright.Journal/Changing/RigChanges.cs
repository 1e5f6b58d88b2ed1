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
        return [.. club.Subjects
            .Where(s => s.Thing == Things.Boat)
            .SelectMany(s => club.Everything(s).Where(r => r.Entry.Kind == PlannedKind && r.Fact is ChangePlanned && !club.IsRetracted(r)))
            .Order(RecordedOrder.Instance)
            .Select(r => new RigChange(club, r))];
    }

    /// <summary>A change by its key; null where there is none.</summary>
    public static RigChange? Find(Club club, string job) => Of(club).FirstOrDefault(c => c.Plan.Job == job);
}
