using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A piece of mending as the journal tells it.</summary>
public sealed class JobView : IWork
{
    private readonly List<Recorded> _records;

    /// <summary>A job, from the entry that planned it.</summary>
    public JobView(Club club, Recorded planned)
        : this(club, planned, null)
    {
    }

    /// <summary>A job by what had been recorded of it before an entry; by all where that is null.</summary>
    internal JobView(Club club, Recorded planned, Recorded? until)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(planned);
        Planned = planned;
        Plan = (JobPlanned)planned.Fact;
        _records = [.. club.About(new("job", Plan.Job)).Where(r => until is null || RecordedOrder.Instance.Compare(r, until) < 0)];
    }

    /// <inheritdoc/>
    public Recorded Planned { get; }

    /// <inheritdoc/>
    public string Key => Plan.Job;

    /// <inheritdoc/>
    public string Boat => Plan.Boat;

    /// <summary>The plan.</summary>
    public JobPlanned Plan { get; }

    /// <summary>The gate it is about; null for the whole boat.</summary>
    public GatePlace? Gate => Plan is { Seat: { } seat, Side: { } side } ? new(seat, side) : null;

    /// <summary>The second gate that it changes, where it exchanges two riggers; null of other work, and where its plan does not say.</summary>
    public GatePlace? Other => Plan is { OtherSeat: { } seat, OtherSide: { } side } ? new(seat, side) : null;

    /// <summary>The gates that it changes; none for the whole boat.</summary>
    public IReadOnlyList<GatePlace> Gates => [.. new[] { Gate, Other }.OfType<GatePlace>()];

    /// <summary>The steps done, from 0.</summary>
    public IReadOnlySet<int> StepsDone => _records.Select(r => r.Fact).OfType<StepDone>().Select(s => s.Step).ToHashSet();

    /// <summary>How many of the plan's steps are marked as done.</summary>
    public int StepsMarked => StepsDone.Count(step => step < Plan.Steps.Count);

    /// <summary>Whether somebody is known to have begun it: a step is marked as done, or it has none.</summary>
    public bool IsBegun => Plan.Steps.Count == 0 || StepsMarked > 0;

    /// <summary>Whether every step is marked as done: what was predicted of the gate holds then, and not before.</summary>
    public bool IsWorked => StepsMarked == Plan.Steps.Count;

    /// <summary>Whether steps that are marked as done have changed its gates: a sleeve is the oar's.</summary>
    public bool ChangedItsGate => Gate is not null && LastStep is not null && Plan.Cause != Cause.Sleeve;

    /// <summary>The entry that said last of a step that it is done; null where none is.</summary>
    public Recorded? LastStep => _records.FindLast(r => r.Fact is StepDone);

    /// <summary>Whether it was finished.</summary>
    public bool IsDone => Done is not null;

    /// <summary>Whether it was given up.</summary>
    public bool IsDropped => Dropped is not null;

    /// <summary>Whether there is still something to do.</summary>
    public bool IsOpen => !IsDone && !IsDropped;

    /// <summary>The causes found when it was finished, the weightiest first; none where none was, or it was not finished.</summary>
    public IReadOnlyList<Cause> Found => (Done?.Fact as JobDone)?.All ?? [];

    /// <summary>The day it was finished.</summary>
    public DateOnly? DoneOn => Done is { } done ? Day.Of(done.Entry) : null;

    /// <summary>The day it was finished or given up; null while it is open.</summary>
    public DateOnly? ClosedOn => DoneOn ?? (Dropped is { } dropped ? Day.Of(dropped.Entry) : null);

    /// <summary>The entries that said of a step that it is done.</summary>
    public IEnumerable<Recorded> StepRecords(int step) => _records.Where(r => r.Fact is StepDone done && done.Step == step);

    /// <summary>The entry that gave it up, unless it was finished all the same.</summary>
    public Recorded? Dropped => IsDone ? null : _records.FindLast(r => r.Fact is JobDropped);

    /// <summary>The entry that finished it.</summary>
    public Recorded? Done => _records.FindLast(r => r.Fact is JobDone);
}
