using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Changing;

/// <summary>A change of a boat's rig that is kept among the jobs, as the journal tells it.</summary>
public sealed class RigChange : IWork
{
    private readonly Club _club;
    private readonly List<Recorded> _records;

    /// <summary>A change, from the entry that planned it.</summary>
    public RigChange(Club club, Recorded planned)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(planned);
        (_club, Planned, Plan) = (club, planned, (ChangePlanned)planned.Fact);
        _records = [.. club.About(new("job", Plan.Job))];
        StepsDone = _records.Select(r => r.Fact).OfType<StepDone>().Select(s => s.Step).Where(s => s >= 0 && s < Plan.Steps.Count).ToHashSet();
    }

    /// <inheritdoc/>
    public Recorded Planned { get; }

    /// <summary>The plan.</summary>
    public ChangePlanned Plan { get; }

    /// <inheritdoc/>
    public string Key => Plan.Job;

    /// <inheritdoc/>
    public string Boat => Plan.Boat;

    /// <inheritdoc/>
    /// <remarks>It is of the whole boat.</remarks>
    public GatePlace? Gate => null;

    /// <summary>The steps done, from 0.</summary>
    public IReadOnlySet<int> StepsDone { get; }

    /// <summary>Whether every step is done.</summary>
    public bool IsWorked => StepsDone.Count == Plan.Steps.Count;

    /// <summary>The entry by which somebody ended it: closed it as it was, or gave it up; null where nobody did.</summary>
    public Recorded? Ended => _records.FindLast(r => r.Fact is JobDone) ?? _records.FindLast(r => r.Fact is JobDropped);

    /// <summary>Whether somebody ended it. What was read again is not looked at.</summary>
    public bool IsEnded => Ended is not null;

    /// <summary>What the steps that are not done take from stores, like parts together.</summary>
    public IReadOnlyList<PartUsed> PartsWanted => [.. Plan.Steps.Where((_, i) => !StepsDone.Contains(i)).SelectMany(s => s.Parts)
        .GroupBy(p => (p.Part, p.Size)).Select(g => new PartUsed(g.Key.Part, g.Key.Size, g.Sum(p => p.Count)))];

    /// <summary>The same parts, and how they stand with the shelf.</summary>
    public IReadOnlyList<JobPart> Parts => [.. JobPart.Of(_club, PartsWanted, Key).Select(p => p with { Taken = [] })];

    /// <summary>What is to be minded at it, each once.</summary>
    public IReadOnlyList<Caution> Cautions =>
    [
        .. (Plan.Steps.Any(s => s.Refits) ? [Caution.Bolts] : Array.Empty<Caution>())
            .Concat(Takes(PartKind.Shim) ? [Caution.BentPin, .. Core.Mending.Cautions.For(RemedyKind.PinFootShim)] : [])
            .Concat(Takes(PartKind.Washer) ? [Caution.BentPin, .. Core.Mending.Cautions.For(RemedyKind.PlateWasher)] : [])
            .Concat(Takes(PartKind.Insert) ? Core.Mending.Cautions.For(RemedyKind.InsertSwap) : [])
            .Where(c => c != Caution.Defer)
            .Distinct(),
        Caution.Defer,
    ];

    /// <summary>The entries that said of a step that it is done.</summary>
    public IEnumerable<Recorded> StepRecords(int step) => _records.Where(r => r.Fact is StepDone done && done.Step == step);

    /// <summary>What is to be read again, and what became of it.</summary>
    /// <param name="settings">How readings are corrected.</param>
    public IReadOnlyList<ReadAgain> Again(MeasuringSettings settings) => new ReadingAgain(_club, this, settings).Of();

    /// <summary>Whether there is something left to do, or to read again.</summary>
    public bool IsOpen(MeasuringSettings settings) => !IsEnded && (!IsWorked || Again(settings).Any(a => a.State != ReadAgainState.Done));

    /// <summary>The day it was ended, or the last of it was done; null while it is open.</summary>
    public DateOnly? ClosedOn(MeasuringSettings settings)
    {
        if (Ended is { } ended)
        {
            return Day.Of(ended.Entry);
        }

        IReadOnlyList<ReadAgain> again = Again(settings);
        return IsWorked && again.All(a => a.State == ReadAgainState.Done)
            ? again.Select(a => a.Day).Concat(_records.Where(r => r.Fact is StepDone).Select(r => (DateOnly?)Day.Of(r.Entry))).Max() ?? Day.Of(Planned.Entry)
            : null;
    }

    private bool Takes(PartKind kind) => Plan.Steps.Any(s => s.Parts.Any(p => p.Part == kind.Word()));
}
