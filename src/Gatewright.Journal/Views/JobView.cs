using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A piece of mending as the journal tells it.</summary>
public sealed class JobView
{
    private readonly List<Recorded> _records;

    /// <summary>A job, from the entry that planned it.</summary>
    public JobView(Club club, Recorded planned)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(planned);
        Planned = planned;
        Plan = (JobPlanned)planned.Fact;
        _records = [.. club.About(new("job", Plan.Job))];
    }

    /// <summary>The entry that planned it.</summary>
    public Recorded Planned { get; }

    /// <summary>The plan.</summary>
    public JobPlanned Plan { get; }

    /// <summary>The gate it is about; null for the whole boat.</summary>
    public GatePlace? Gate => Plan is { Seat: { } seat, Side: { } side } ? new(seat, side) : null;

    /// <summary>The steps done, from 0.</summary>
    public IReadOnlySet<int> StepsDone => _records.Select(r => r.Fact).OfType<StepDone>().Select(s => s.Step).ToHashSet();

    /// <summary>Whether it was finished.</summary>
    public bool IsDone => Done is not null;

    /// <summary>Whether it was given up.</summary>
    public bool IsDropped => !IsDone && _records.Exists(r => r.Fact is JobDropped);

    /// <summary>Whether there is still something to do.</summary>
    public bool IsOpen => !IsDone && !IsDropped;

    /// <summary>The cause found when it was finished, if one was.</summary>
    public Cause? Found => (Done?.Fact as JobDone)?.Found;

    /// <summary>The day it was finished.</summary>
    public DateOnly? DoneOn => Done is { } done ? Day.Of(done.Entry) : null;

    internal Recorded? Done => _records.FindLast(r => r.Fact is JobDone);
}
