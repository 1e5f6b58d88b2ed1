using Gatewright.Core.Checking;
using Gatewright.Core.Mending;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Jobs;

/// <summary>The steps of a job in the language of whoever reads them.</summary>
public static class JobSteps
{
    /// <summary>
    /// The steps as they were put down, or the same ones in another language where that is sure: where the remedy that the journal
    /// still gives makes exactly those that were put down, in the language they were put down in.
    /// </summary>
    /// <remarks>Takes a diagnosis. As many steps as the job has, in their order, so that what was done is ticked.</remarks>
    /// <param name="club">The club.</param>
    /// <param name="job">The job.</param>
    /// <param name="settings">What the boat is checked by.</param>
    /// <param name="say">The language wanted.</param>
    public static IReadOnlyList<string> In(Club club, JobView job, CheckSettings settings, Wording say)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(say);
        return JobRemedy.Of(club, job, settings) is { } remedy && IsOf(remedy, job) ? JobPlan.Steps(remedy, say) : job.Plan.Steps;
    }

    private static bool IsOf(Remedy remedy, JobView job)
    {
        foreach (Language language in Language.All)
        {
            if (JobPlan.Steps(remedy, Wording.In(language)).SequenceEqual(job.Plan.Steps))
            {
                return true;
            }
        }

        return false;
    }
}
