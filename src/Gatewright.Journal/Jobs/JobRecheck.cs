using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>What was read to prove a job, and what it says.</summary>
/// <param name="Stations">Each station that was to be expected something of.</param>
/// <param name="Judged">
/// The re-check judged against what was believed before the work and predicted of it; null while nothing is read, and where
/// the prediction cannot be worked out again from the journal: then only the bands of the plan tell.
/// </param>
public sealed record JobRecheck(IReadOnlyList<RecheckedStation> Stations, Recheck? Judged)
{
    /// <summary>Whether anything was read to prove the job.</summary>
    public bool IsRead => Stations.Any(s => s.Read is not null);

    /// <summary>Whether some of the stations were read and others not: what was read may tell of a fault, but proves no mending.</summary>
    public bool IsPartlyRead => IsRead && Stations.Any(s => s.Read is null);

    /// <summary>
    /// What the re-check found, by the judgement, or by the bands where there is none; null while nothing is read, and where
    /// what was read so far would prove the mending but a station is still unread.
    /// </summary>
    public RecheckOutcome? Outcome => Said is RecheckOutcome.Mended && IsPartlyRead ? null : Said;

    private RecheckOutcome? Said => Judged?.Outcome
        ?? (IsRead ? Stations.All(s => s.IsInside != false) ? RecheckOutcome.Mended : RecheckOutcome.Otherwise : null);

    /// <summary>
    /// The cause that closing the job finds, unless somebody says otherwise: the one it was planned for, if it is mended. A gate that
    /// reads as the work should leave it is proof of no cause where nobody is known to have done all of it.
    /// </summary>
    public static Cause? Found(JobView job, RecheckOutcome? outcome)
    {
        ArgumentNullException.ThrowIfNull(job);
        return outcome == RecheckOutcome.Mended && job.IsWorked ? job.Plan.Cause : null;
    }

    /// <summary>The readings of a job, station by station, corrected; nothing is judged, which takes longer.</summary>
    /// <param name="club">The club.</param>
    /// <param name="job">The job.</param>
    /// <param name="settings">What the boat is checked by.</param>
    public static JobRecheck Read(Club club, JobView job, CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(settings);
        CorrectedReadings? read = Corrected(new BoatView(club, job.Plan.Boat), job, settings.Diagnosing.Measuring);
        return new([.. job.Plan.Expected.OrderBy(e => e.Station).Select(e => Station(e, job, read))], null);
    }

    /// <summary>The readings of a job, judged.</summary>
    /// <param name="club">The club.</param>
    /// <param name="job">The job.</param>
    /// <param name="remedy">Its remedy; null where that no longer follows from the journal.</param>
    /// <param name="settings">What the boat is checked by.</param>
    public static JobRecheck Judge(Club club, JobView job, Remedy? remedy, CheckSettings settings)
    {
        JobRecheck read = Read(club, job, settings);
        return read.IsRead
            && remedy is { Before: { } before, After: { } after }
            && Corrected(new BoatView(club, job.Plan.Boat), job, settings.Diagnosing.Measuring) is { } readings
            ? read with { Judged = Recheck.Judge(before, after, readings) }
            : read;
    }

    private static CorrectedReadings? Corrected(BoatView boat, JobView job, MeasuringSettings settings) =>
        job.Gate is { } gate
        && boat.ReadingsOf(job.Plan.Job, settings).Where(r => r.Gate == gate && r.Item == ReadItem.Gate).ToList() is { Count: > 0 } proof
            ? CorrectedReadings.Of(proof, settings)
            : null;

    private static RecheckedStation Station(ExpectedAt expected, JobView job, CorrectedReadings? read) => new(
        expected,
        job.Gate is { } gate && read?.IndexOf(gate, expected.Station) is >= 0 and int at ? read.Pitches[at].Estimate : null);
}
