using System.Collections.Immutable;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Learning;

/// <summary>The finished jobs that a club's chances have learnt from, each once, however often it was told.</summary>
/// <remarks>One thing checked twice on a day is one job: a day is the finest that is told.</remarks>
public sealed class JobRecord
{
    private readonly ImmutableSortedDictionary<(DateOnly Day, string Name, GatePlace? Gate, string Code), FinishedJob> _jobs;

    private JobRecord(ImmutableSortedDictionary<(DateOnly Day, string Name, GatePlace? Gate, string Code), FinishedJob> jobs)
    {
        _jobs = jobs;

        // Asked for by every number of a table that is shown: counted once, not each time over all jobs.
        Found = FoundIn([.. jobs.Values]);
    }

    /// <summary>No job.</summary>
    public static JobRecord Empty { get; } =
        new(ImmutableSortedDictionary.Create<(DateOnly Day, string Name, GatePlace? Gate, string Code), FinishedJob>(KeyOrder.Instance));

    /// <summary>The jobs by day, then by boat or gauge, from the bow to the stern; whatever order they were told in.</summary>
    public IEnumerable<FinishedJob> Jobs => _jobs.Values;

    /// <summary>How many there are.</summary>
    public int Count => _jobs.Count;

    /// <summary>What was found among how many things checked.</summary>
    public FoundCauses Found { get; }

    /// <summary>The job on record of the same thing on the same day, or null.</summary>
    public FinishedJob? Like(FinishedJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return _jobs.GetValueOrDefault(job.Key);
    }

    /// <summary>The record with these jobs too; those that are on it already change nothing.</summary>
    /// <exception cref="ArgumentException">Something else was found in the same thing on the same day.</exception>
    public JobRecord And(IEnumerable<FinishedJob> jobs)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        var all = _jobs.ToBuilder();
        foreach (FinishedJob job in jobs)
        {
            if (!all.TryGetValue(job.Key, out FinishedJob? known))
            {
                all.Add(job.Key, job);
            }
            else if (known.FoundCode != job.FoundCode)
            {
                throw new ArgumentException(FormattableString.Invariant(
                    $"{job.FoundCode} was found in {job.Thing.Name} on {job.Day:yyyy-MM-dd}, and {known.FoundCode} in the same {job.Thing.Code}."));
            }
        }

        return new(all.ToImmutable());
    }

    private static FoundCauses FoundIn(FinishedJob[] jobs)
    {
        return new()
        {
            GatesChecked = Checked<CheckedThing.OfGate>(),
            GatePitch = With(Cause.GatePitch),
            PinAft = With(Cause.PinAft),
            PinOut = With(Cause.PinOut),
            Rigger = With(Cause.Rigger),
            OarsChecked = Checked<CheckedThing.OfOar>(),
            Sleeve = With(Cause.Sleeve),
            BoatsChecked = Checked<CheckedThing.OfLevel>(),
            HullLevel = With(Cause.HullLevel),
            GaugesChecked = Checked<CheckedThing.OfGauge>(),
            GaugeZero = With(Cause.GaugeZero),
        };

        int Checked<T>()
            where T : CheckedThing => jobs.Count(job => job.Thing is T);

        int With(Cause cause) => jobs.Count(job => job.Found.Contains(cause));
    }

    /// <summary>By day, by name, from the bow to the stern, by code: the same in every culture.</summary>
    private sealed class KeyOrder : IComparer<(DateOnly Day, string Name, GatePlace? Gate, string Code)>
    {
        public static KeyOrder Instance { get; } = new();

        public int Compare(
            (DateOnly Day, string Name, GatePlace? Gate, string Code) x, (DateOnly Day, string Name, GatePlace? Gate, string Code) y)
        {
            int day = x.Day.CompareTo(y.Day);
            int name = day != 0 ? day : string.CompareOrdinal(x.Name, y.Name);
            int gate = name != 0 ? name : Nullable.Compare(x.Gate, y.Gate);
            return gate != 0 ? gate : string.CompareOrdinal(x.Code, y.Code);
        }
    }
}
