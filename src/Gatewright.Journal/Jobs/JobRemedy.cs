using Gatewright.Core.Checking;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>The remedy that a job was planned with, worked out again from what was on record then.</summary>
public static class JobRemedy
{
    /// <summary>The remedy of a job; null where it no longer follows from the journal, as after a retraction.</summary>
    /// <remarks>Takes a diagnosis: call it when the screen is drawn.</remarks>
    /// <param name="club">The club.</param>
    /// <param name="job">The job.</param>
    /// <param name="settings">What the boat is checked by.</param>
    public static Remedy? Of(Club club, JobView job, CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(settings);
        return job.Gate is { } gate
            && new BoatView(club, job.Plan.Boat).Before(job.Planned).Record(settings.Diagnosing.Measuring) is { } then
            && then.Current.Readings.Any(r => r.Gate == gate)
                ? Remedies.For(then.Check(settings), gate, MendingSettings.Default)
                    .FirstOrDefault(r => r.Kind.Code() == job.Plan.Remedy && r.Part.Cause == job.Plan.Cause && TakesTheSame(r, job.Plan.Parts))
                : null;
    }

    /// <summary>A plan for the whole shed may give a gate other sizes than it would get by itself: then something else was predicted.</summary>
    private static bool TakesTheSame(Remedy remedy, IReadOnlyList<PartUsed> parts) => PartCount.Of(remedy.Parts)
        .Select(c => new PartUsed(c.Part.Kind.Word(), (decimal)c.Part.Size, c.Count)).ToHashSet().SetEquals(parts);
}
