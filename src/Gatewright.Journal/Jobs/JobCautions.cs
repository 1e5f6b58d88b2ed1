using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>What is to be minded at a job.</summary>
public static class JobCautions
{
    /// <summary>The remedies a job consists of, the first first; none of a code that this program does not know.</summary>
    public static IReadOnlyList<RemedyKind> Remedies(JobView job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. job.Plan.Remedy
            .Split(JobPlan.Both)
            .SelectMany(code => RemedyKinds.All.Where(kind => kind.Code() == code))];
    }

    /// <summary>
    /// The cautions of a job, each once, whose word comes first last. Lifting is minded wherever the boat is worked on and
    /// read again, and of a boat that is to stay ashore that it is marked so.
    /// </summary>
    /// <param name="remedies">What is done.</param>
    /// <param name="boat">How the boat stands; null where that is not known.</param>
    public static IReadOnlyList<Caution> Of(IReadOnlyList<RemedyKind> remedies, BoatStanding? boat)
    {
        ArgumentNullException.ThrowIfNull(remedies);
        IEnumerable<Caution> ofTheWork = remedies.SelectMany(Cautions.For).Where(c => c is not Caution.Defer);
        bool stopped = boat?.Check?.Verdict.Gates.Any(g => g.Verdict == Verdict.Stop) == true || boat?.StaysAshore == true;
        return [.. (stopped ? [Caution.Stopped] : Array.Empty<Caution>())
            .Concat(ofTheWork)
            .Append(Caution.Lifting)
            .Append(Caution.Defer)
            .Distinct()];
    }
}
