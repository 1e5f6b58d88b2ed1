using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>What has to be read again once a job is finished, since nothing that is known of it still holds; or once it is given up, if anything was done.</summary>
/// <param name="IsWholeBoat">Whether every gate has to be: level or gauge was wrong when they were read.</param>
/// <param name="Gates">The gates that have to be.</param>
public sealed record JobReadAgain(bool IsWholeBoat, IReadOnlyList<GatePlace> Gates)
{
    /// <summary>What a job that ended leaves to be read.</summary>
    /// <param name="job">The job.</param>
    /// <param name="boat">How its boat stands now; null where nothing is on record.</param>
    public static JobReadAgain Of(JobView job, BoatStanding? boat)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.Gate is null)
        {
            return new(job.Found.Any(found => found.IsBoatWide()), []);
        }

        if (job.IsDropped && !job.ChangedItsGate)
        {
            return new(false, []);
        }

        return new(false, [.. job.Gates.Except((boat?.Check?.Verdict.Gates ?? []).Select(g => g.Gate))]);
    }
}
