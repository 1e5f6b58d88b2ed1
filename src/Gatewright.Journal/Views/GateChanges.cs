using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>When each gate of a boat was last changed: by the day, and within a day in the journal's own order.</summary>
internal sealed class GateChanges
{
    private readonly Dictionary<GatePlace, Recorded> _changed = [];
    private readonly Dictionary<GatePlace, Recorded> _mended = [];
    private readonly HashSet<string> _underWay = [];
    private readonly BoatDays _days;
    private Recorded? _anyMended;

    public GateChanges(BoatView boat)
    {
        IReadOnlyList<JobView> jobs = boat.Jobs;
        _days = new(boat.Others);
        foreach (Recorded record in boat.Others)
        {
            if (record.As<Reported>() is { Seat: { } seat, Side: { } side } report && report.Kind.ChangesTheGate())
            {
                Later(_changed, new(seat, side), record);
            }
            else if (record.As<GateMended>() is { } told)
            {
                _anyMended = Mended(new(told.Seat, told.Side), record);
            }
        }

        Dictionary<(string Job, GatePlace Gate), Recorded> proofs = jobs.Count == 0 ? [] : Proofs(boat.Readings);
        foreach (JobView job in jobs)
        {
            // Of two riggers that are exchanged neither is proven without the other having gone too.
            Recorded? proof = job.Gates.Select(g => proofs.GetValueOrDefault((job.Key, g))).OfType<Recorded>().Min(_days);
            foreach (GatePlace gate in job.Gates)
            {
                Take(job, gate, proof);
            }
        }
    }

    /// <summary>The last that was done to each gate, from the bow.</summary>
    public IReadOnlyList<GateChange> Last => [.. _changed.Select(c => new GateChange(c.Key, _days.Of(c.Value), By(c.Value.Fact))).OrderBy(c => c.Gate)];

    /// <summary>
    /// Whether a reading's gate was changed after it was read. A sleeve is the oar's, and no mending of a gate touches
    /// it; and what was read to prove a mending speaks of the gate as mended, though the job was closed, or a step of it
    /// marked as done, after it.
    /// </summary>
    public bool AreAfter(Recorded reading) =>
        reading.Fact is ReadingTaken taken
        && taken.Item != Core.Measuring.ReadItem.Sleeve
        && _changed.GetValueOrDefault(new(taken.Seat, taken.Side)) is { } change
        && (taken.Job is null || ProvenJob(change.Fact) != taken.Job)
        && IsAfter(change, reading);

    /// <summary>Whether what was told has been seen to: its gate was mended since, or any gate if it is of the whole boat.</summary>
    public bool IsMended(Recorded report) => report.Fact switch
    {
        Reported { Seat: { } seat, Side: { } side } => IsAfter(_mended.GetValueOrDefault(new(seat, side)), report),
        Reported => IsAfter(_anyMended, report),
        _ => false,
    };

    private void Take(JobView job, GatePlace gate, Recorded? proof)
    {
        if (proof is not null)
        {
            Later(_changed, gate, proof);
        }

        if (job.Done is { } done)
        {
            // A sleeve is the oar's: what was read of the gate it lay in still stands.
            _anyMended = Mended(gate, done, isOfTheGate: job.Plan.Cause != Cause.Sleeve);
        }
        else if (job.ChangedItsGate)
        {
            // Under way or given up, it has mended nothing; the gate is not what it was all the same.
            Later(_changed, gate, job.LastStep!);
            if (job.IsOpen)
            {
                _underWay.Add(job.Key);
            }
        }
    }

    /// <summary>The first reading of each re-check: whatever was read of the gate before it speaks of the gate before the work.</summary>
    private static Dictionary<(string Job, GatePlace Gate), Recorded> Proofs(IReadOnlyList<Recorded> readings)
    {
        Dictionary<(string, GatePlace), Recorded> proofs = [];
        foreach (Recorded record in readings)
        {
            if (record.Fact is ReadingTaken { Item: not Core.Measuring.ReadItem.Sleeve, Job: { } job } taken)
            {
                proofs.TryAdd((job, new(taken.Seat, taken.Side)), record);
            }
        }

        return proofs;
    }

    /// <summary>The job whose re-check speaks of the gate as this left it; null where none does.</summary>
    private string? ProvenJob(Fact change) => change switch
    {
        JobDone done => done.Job,
        StepDone step when _underWay.Contains(step.Job) => step.Job,
        _ => null,
    };

    private GateChangedBy By(Fact fact) => fact switch
    {
        Reported { Kind: ReportKind.Knock } => GateChangedBy.Knock,
        Reported => GateChangedBy.Refitting,
        GateMended => GateChangedBy.Mending,
        StepDone step => _underWay.Contains(step.Job) ? GateChangedBy.JobUnderWay : GateChangedBy.JobGivenUp,
        _ => GateChangedBy.FinishedJob,
    };

    /// <returns>The latest mending of any gate.</returns>
    private Recorded? Mended(GatePlace gate, Recorded done, bool isOfTheGate = true)
    {
        if (isOfTheGate)
        {
            Later(_changed, gate, done);
        }

        Later(_mended, gate, done);
        return IsAfter(done, _anyMended) ? done : _anyMended;
    }

    private void Later(Dictionary<GatePlace, Recorded> latest, GatePlace gate, Recorded record)
    {
        if (IsAfter(record, latest.GetValueOrDefault(gate)))
        {
            latest[gate] = record;
        }
    }

    private bool IsAfter(Recorded? one, Recorded? other) => _days.Compare(one, other) > 0;
}
