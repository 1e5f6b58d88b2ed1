using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>All pieces of mending that a club has planned, whatever came of them, oldest first.</summary>
public sealed class ClubJobs
{
    private static readonly string PlannedKind = FactKinds.NameOf<JobPlanned>();

    private ClubJobs(List<JobView> all) => All = all;

    /// <summary>All of them.</summary>
    public IReadOnlyList<JobView> All { get; }

    /// <summary>Those with something still to do.</summary>
    public IEnumerable<JobView> Open => All.Where(j => j.IsOpen);

    /// <summary>The jobs of a club.</summary>
    /// <remarks>Told by the kind of each entry: a long journal's other entries are not read for it.</remarks>
    public static ClubJobs Of(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        return new([.. club.Subjects
            .Where(s => s.Thing == Things.Boat)
            .SelectMany(s => club.Everything(s).Where(r => r.Entry.Kind == PlannedKind && r.Fact is JobPlanned && !club.IsRetracted(r)))
            .Order(RecordedOrder.Instance)
            .Select(r => new JobView(club, r))]);
    }

    /// <summary>A job by its key; null when there is none.</summary>
    public JobView? Find(string job) => All.FirstOrDefault(j => j.Plan.Job == job);

    /// <summary>Those finished or given up on or after a day, the latest first.</summary>
    public IEnumerable<JobView> Closed(DateOnly since) => All
        .Where(j => !j.IsOpen && j.ClosedOn >= since)
        .OrderByDescending(j => j.ClosedOn);
}
