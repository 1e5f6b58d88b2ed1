using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>A job's re-check as far as it was taken, told by the journal alone: so it goes on where it stopped, whatever stopped it.</summary>
public sealed class RecheckTaken
{
    private readonly JobView _job;

    /// <summary>What was taken to prove a job.</summary>
    public RecheckTaken(Club club, JobView job)
    {
        ArgumentNullException.ThrowIfNull(job);
        _job = job;
        Boat = new(club, job.Plan.Boat);
        Readings = [.. Boat.Readings.Where(r => r.Fact is ReadingTaken taken && taken.Job == job.Plan.Job)];
        Laid = LaidFor();
    }

    /// <summary>The boat.</summary>
    public BoatView Boat { get; }

    /// <summary>What was read to prove the job and holds, oldest first.</summary>
    public IReadOnlyList<Recorded> Readings { get; }

    /// <summary>How the boat was last laid for it; null while nobody has said.</summary>
    public BoatLaid? Laid { get; }

    /// <summary>How many readings of it were taken as the boat lies now.</summary>
    public int ReadAsItLies => Laid is { } laid ? Readings.Count(r => ((ReadingTaken)r.Fact).Lying == laid.Lying) : 0;

    /// <summary>What is recorded when somebody says how the boat lies; null where the journal says so already.</summary>
    /// <param name="laying">How it lies.</param>
    /// <param name="isMoved">Whether it was moved since its last reading. If not it lay so for all that was read as it lies now.</param>
    /// <param name="newLying">A key for a lying that is new.</param>
    public BoatLaid? Said(Laying laying, bool isMoved, string newLying)
    {
        ArgumentNullException.ThrowIfNull(laying);
        return laying.Said(Boat, Laid?.Lying, isMoved && ReadAsItLies > 0, newLying, round: null);
    }

    /// <summary>What is recorded when the gauge shows a value: the reading, and before the first of a lying how the boat lies.</summary>
    /// <param name="at">The station.</param>
    /// <param name="value">Degrees.</param>
    /// <param name="laying">How the boat lies now.</param>
    /// <param name="newLying">A key for a lying that is new.</param>
    /// <param name="gauge">The gauge's key, if it has one.</param>
    /// <exception cref="InvalidOperationException">The job is of no gate.</exception>
    public IReadOnlyList<Fact> Reading(Station at, decimal value, Laying laying, string newLying, string? gauge)
    {
        ArgumentNullException.ThrowIfNull(laying);
        GatePlace gate = _job.Gate ?? throw new InvalidOperationException("The job is of no gate.");
        bool isLaid = Laid is { } laid && laying.Is(laid);
        string lying = isLaid ? Laid!.Lying : newLying;
        var taken = new ReadingTaken(lying, Boat.Key, ReadItem.Gate, gate.Seat, gate.Side, value, at, Gauge: gauge, Job: _job.Plan.Job);
        return isLaid ? [taken] : [laying.Fact(lying, Boat.Key, round: null), taken];
    }

    /// <summary>What the gauge showed where a reading was taken the time before, in this re-check or before the work, degrees; null for never.</summary>
    public decimal? Before(Recorded reading) => Earlier(reading) is { } earlier ? AskedSlips.Value(earlier) : null;

    /// <summary>What the work was to make of it, where nothing was read there since the work but this, degrees; null otherwise.</summary>
    public decimal? Expected(Recorded reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Earlier(reading) is { Fact: ReadingTaken { Job: { } job } } && job == _job.Plan.Job ? null
            : _job.Plan.Expected.FirstOrDefault(e => e.Station == ((ReadingTaken)reading.Fact).Station)?.Value;
    }

    /// <summary>Whether a reading looks like a slip, and nobody has said yet that it is none.</summary>
    public bool IsAsked(Recorded reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return !AskedSlips.IsKept(Boat, reading) && Slip.May(((ReadingTaken)reading.Fact).Value, Before(reading), Expected(reading));
    }

    /// <summary>
    /// The reading that is to be taken back when the gauge shows a value: the last at that station in the same lying, if it was asked about
    /// as a slip and this one does not find it again; null for none.
    /// </summary>
    /// <param name="at">The station.</param>
    /// <param name="value">Degrees.</param>
    /// <param name="laying">How the boat lies now.</param>
    public Recorded? PutRight(Station at, decimal value, Laying laying)
    {
        ArgumentNullException.ThrowIfNull(laying);
        return Laid is { } laid
            && laying.Is(laid)
            && Readings.LastOrDefault(r => r.Fact is ReadingTaken taken && taken.Station == at) is { Fact: ReadingTaken asked } slip
            && asked.Lying == laid.Lying
            && IsAsked(slip)
            && !Slip.IsFoundAgain(asked.Value, value)
                ? slip
                : null;
    }

    /// <summary>What takes a reading back, and what gives back the slip that it put right.</summary>
    public IReadOnlyList<Retracted> Undoing(Recorded reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return AskedSlips.PutRightBy(Boat, reading) is { } retraction ? [new(reading.Entry.Id), new(retraction.Entry.Id)] : [new(reading.Entry.Id)];
    }

    private Recorded? Earlier(Recorded reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return ReadingStep.Of((ReadingTaken)reading.Fact) is { } step
            ? AskedSlips.At(Boat, step).SkipWhile(r => r.Entry.Id != reading.Entry.Id).Skip(1).FirstOrDefault()
            : null;
    }

    /// <summary>
    /// As for the last reading of it; or as somebody has said since then, which no reading names yet. What was said before the job was planned
    /// is long ago.
    /// </summary>
    private BoatLaid? LaidFor()
    {
        Recorded since = Readings.Count > 0 ? Readings[^1] : _job.Planned;
        BoatLaid? said = LaidLast.Of(Boat.Others
            .Where(r => RecordedOrder.Instance.Compare(r, since) > 0)
            .Select(r => r.As<BoatLaid>())
            .OfType<BoatLaid>()
            .Where(l => l.Round is null && !Boat.Readings.Any(b => b.Fact is ReadingTaken taken && taken.Lying == l.Lying)));
        return said ?? (Readings.Count == 0 ? null
            : Boat.Others.Select(r => r.As<BoatLaid>()).LastOrDefault(l => l?.Lying == ((ReadingTaken)Readings[^1].Fact).Lying));
    }
}
