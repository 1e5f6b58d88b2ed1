using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>Something that happened to a boat, or was decided about it.</summary>
/// <param name="Record">The entry: what, who, when it was recorded.</param>
/// <param name="Day">The day it happened.</param>
/// <param name="IsOpen">
/// Whether it is still to be seen to: a report until its gate is mended, a hold until it is lifted, a job until it ends.
/// </param>
public sealed record Incident(Recorded Record, DateOnly Day, bool IsOpen);

/// <summary>What happened to a boat: reports, holds and releases, jobs, mends.</summary>
public static class BoatIncidents
{
    /// <summary>All that holds, newest first.</summary>
    public static IReadOnlyList<Incident> Of(BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        var days = new BoatDays(boat.Records);
        var changes = new GateChanges(boat);
        HashSet<Recorded> holds = [.. boat.Holds];
        IEnumerable<Incident> told = boat.Records
            .Where(r => r.Fact is Reported or Held or Released or GateMended)
            .Select(r => new Incident(r, days.Of(r), r.Fact switch
            {
                Reported => !changes.IsMended(r),
                Held => holds.Contains(r),
                _ => false,
            }));
        IEnumerable<Incident> jobs = boat.Jobs.SelectMany(job => new[]
        {
            new Incident(job.Planned, days.Of(job.Planned), job.IsOpen),
            job.Done is { } done ? new Incident(done, days.Of(done), false) : null,
        }).OfType<Incident>();
        return [.. told.Concat(jobs).OrderByDescending(i => i.Record, days)];
    }
}
