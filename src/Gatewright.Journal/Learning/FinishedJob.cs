using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Jobs;

namespace Gatewright.Journal.Learning;

/// <summary>One thing that was checked on one day, and what was found wrong with it.</summary>
public sealed record FinishedJob
{
    /// <summary>A job.</summary>
    /// <param name="thing">What was checked.</param>
    /// <param name="day">On which day.</param>
    /// <param name="found">The cause that was found; null when nothing was wrong.</param>
    /// <exception cref="ArgumentException">No such cause is found in such a thing.</exception>
    public FinishedJob(CheckedThing thing, DateOnly day, Cause? found)
        : this(thing, day, found is { } cause ? [cause] : Array.Empty<Cause>())
    {
    }

    private FinishedJob(CheckedThing thing, DateOnly day, IReadOnlyList<Cause> found)
    {
        ArgumentNullException.ThrowIfNull(thing);
        foreach (Cause cause in found)
        {
            if (!thing.Causes.Contains(cause))
            {
                throw new ArgumentException($"{cause.Code()} is not found in: {thing.Code}.", nameof(found));
            }
        }

        (Thing, Day, Found) = (thing, day, [.. found.Distinct().Order()]);
    }

    /// <summary>A job that found several causes, each once, in any order; none where nothing was wrong.</summary>
    /// <exception cref="ArgumentException">No such cause is found in such a thing.</exception>
    public static FinishedJob Of(CheckedThing thing, DateOnly day, IReadOnlyList<Cause> found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return new(thing, day, found);
    }

    /// <summary>What was checked.</summary>
    public CheckedThing Thing { get; }

    /// <summary>On which day.</summary>
    public DateOnly Day { get; }

    /// <summary>The causes that were found, each once; empty when nothing was wrong.</summary>
    public IReadOnlyList<Cause> Found { get; }

    /// <summary>The codes of what was found, "gate-pitch + pin-aft"; "none" for nothing.</summary>
    public string FoundCode => Found.Count == 0 ? Causes.NoneCode : string.Join(JobPlan.Both, Found.Select(c => c.Code()));

    /// <summary>Whether it is of the same thing and day, and found the same.</summary>
    public bool Equals(FinishedJob? other) => other is not null && Thing == other.Thing && Day == other.Day && Found.SequenceEqual(other.Found);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Thing, Day, FoundCode);

    /// <summary>
    /// What two records of one job have in common. A name's case and spaces do not count, nor does the class: it goes
    /// with the boat.
    /// </summary>
    internal (DateOnly Day, string Name, GatePlace? Gate, string Code) Key =>
        (Day, NameText.Key(Thing.Name), Thing.Place?.Gate, Thing.Code);
}
