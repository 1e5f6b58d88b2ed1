using Gatewright.Core.Judging;
using Gatewright.Journal.Standing;

namespace Gatewright.Journal.Jobs;

/// <summary>An open job with the boat it is on.</summary>
/// <param name="Job">The job: a piece of mending, or a change of the rig.</param>
/// <param name="Boat">How its boat stands; null until that is worked out.</param>
public sealed record UrgentJob(IWork Job, BoatStanding? Boat)
{
    /// <summary>Whether its boat is to stay ashore.</summary>
    public bool StaysAshore => Boat?.StaysAshore == true;

    /// <summary>The verdict on its gate, or on the whole boat, as it is shown, for a job that is of none; null where there is none.</summary>
    public Verdict? Verdict => Job.Gate is { } gate
        ? Boat?.Check?.Verdict.Gates.FirstOrDefault(g => g.Gate == gate)?.Verdict
        : Boat?.Shown;

    /// <summary>
    /// The order in which jobs are done: those on boats to stay ashore first, of these and of the others the worst verdict
    /// first, and then what has waited longest.
    /// </summary>
    public static IReadOnlyList<UrgentJob> InOrder(IEnumerable<UrgentJob> jobs)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        return [.. jobs
            .OrderByDescending(j => j.StaysAshore)
            .ThenByDescending(j => j.Verdict)
            .ThenBy(j => j.Job.Planned.Entry.Time)];
    }
}
