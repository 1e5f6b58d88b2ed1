using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange;

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
    {
        ArgumentNullException.ThrowIfNull(thing);
        if (found is { } cause && !thing.Causes.Contains(cause))
        {
            throw new ArgumentException($"{cause.Code()} is not found in: {thing.Code}.", nameof(found));
        }

        (Thing, Day, Found) = (thing, day, found);
    }

    /// <summary>What was checked.</summary>
    public CheckedThing Thing { get; }

    /// <summary>On which day.</summary>
    public DateOnly Day { get; }

    /// <summary>The cause that was found; null when nothing was wrong.</summary>
    public Cause? Found { get; }

    /// <summary>The code of what was found; "none" for nothing.</summary>
    public string FoundCode => Found?.Code() ?? Causes.NoneCode;

    /// <summary>
    /// What two records of one job have in common. A name's case and spaces do not count, nor does the class: it goes
    /// with the boat.
    /// </summary>
    internal (DateOnly Day, string Name, GatePlace? Gate, string Code) Key =>
        (Day, NameText.Key(Thing.Name), Thing.Place?.Gate, Thing.Code);
}
