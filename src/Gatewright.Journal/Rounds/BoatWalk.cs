using System.Collections.Immutable;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Rounds;

/// <summary>Where somebody stands who reads a boat: what has been read, what is read now, what was passed over.</summary>
/// <param name="Order">The steps of this round on this boat.</param>
/// <param name="Boat">What the round has of it.</param>
/// <param name="Now">What is read now; null when every step was read or passed over.</param>
/// <param name="Skipped">What was passed over. No entry tells of it: after a restart it is asked for again.</param>
public sealed record BoatWalk(
    IReadOnlyList<ReadingStep> Order, BoatInRound Boat, ReadingStep? Now, ImmutableHashSet<ReadingStep> Skipped)
{
    /// <summary>Takes a boat up where the journal says it was left.</summary>
    /// <param name="order">The steps.</param>
    /// <param name="boat">What the round has of it.</param>
    /// <param name="asked">What is to be read first, if that is known.</param>
    public static BoatWalk Open(IReadOnlyList<ReadingStep> order, BoatInRound boat, ReadingStep? asked = null)
    {
        ArgumentNullException.ThrowIfNull(boat);
        var walk = new BoatWalk(order, boat, null, []);
        return walk with { Now = asked ?? walk.After(boat.Last is { } last ? ReadingStep.Of((ReadingTaken)last.Fact) : null) };
    }

    /// <summary>Whether every step was read or passed over.</summary>
    public bool IsOver => Now is null;

    /// <summary>The steps that were not read in this round.</summary>
    public IReadOnlyList<ReadingStep> Left => [.. Order.Where(s => !Boat.IsRead(s))];

    /// <summary>
    /// What is recorded when the gauge shows a value: the reading, and before the first of a lying how the boat lies.
    /// </summary>
    /// <param name="value">Degrees.</param>
    /// <param name="laying">How the boat lies now.</param>
    /// <param name="newLying">A key for a lying that is new.</param>
    /// <param name="gauge">The gauge's key, if it has one.</param>
    /// <exception cref="InvalidOperationException">Nothing is read now.</exception>
    public IReadOnlyList<Fact> Reading(decimal value, Laying laying, string newLying, string? gauge)
    {
        ArgumentNullException.ThrowIfNull(laying);
        ReadingStep step = Now ?? throw new InvalidOperationException("Nothing is read now.");
        bool isLaid = Boat.Laid is { } laid && laying.Is(laid);
        string lying = isLaid ? Boat.Laid!.Lying : newLying;
        var taken = new ReadingTaken(
            lying, Boat.Boat.Key, step.Item, step.Gate.Seat, step.Gate.Side, value, step.Station, Gauge: gauge);
        return isLaid ? [taken] : [laying.Fact(lying, Boat.Boat.Key, Boat.Round), taken];
    }

    /// <summary>
    /// The reading that is to be taken back when the gauge shows a value: the last of the same thing in the same lying, if it
    /// was asked about as a slip and this one does not find it again; null for none.
    /// </summary>
    /// <param name="value">Degrees.</param>
    /// <param name="laying">How the boat lies now.</param>
    public Recorded? PutRight(decimal value, Laying laying)
    {
        ArgumentNullException.ThrowIfNull(laying);
        return Now is { } step
            && Boat.Laid is { } laid
            && laying.Is(laid)
            && Boat.AskedAbout(step) is { Fact: ReadingTaken asked } slip
            && !Slip.IsFoundAgain(asked.Value, value)
                ? slip
                : null;
    }

    /// <summary>After a reading was recorded: on to the next step.</summary>
    public BoatWalk Recorded(BoatInRound boat)
    {
        BoatWalk read = this with { Boat = boat };
        return read with { Now = read.After(Now) };
    }

    /// <summary>The boat as it is now, with nobody moving on.</summary>
    public BoatWalk With(BoatInRound boat) => this with { Boat = boat };

    /// <summary>Passes over the step read now.</summary>
    public BoatWalk Skip()
    {
        if (Now is not { } step)
        {
            return this;
        }

        BoatWalk skipped = this with { Skipped = Skipped.Add(step) };
        return skipped with { Now = skipped.After(step) };
    }

    /// <summary>Goes to a step, read before or not: a second reading of it is a further reading.</summary>
    public BoatWalk GoTo(ReadingStep step) => this with { Now = step, Skipped = Skipped.Remove(step) };

    /// <summary>Goes so many steps on, or back, along the order.</summary>
    public BoatWalk Move(int steps)
    {
        if (Order.Count == 0)
        {
            return this;
        }

        int at = IndexOf(Now);
        int to = at < 0 ? (steps > 0 ? 0 : Order.Count - 1) : (((at + steps) % Order.Count) + Order.Count) % Order.Count;
        return GoTo(Order[to]);
    }

    /// <summary>What takes the last reading back, and what gives back the slip that it put right; nothing when there is none.</summary>
    public IReadOnlyList<Retracted> Undoing => Boat.Last is not { } last ? []
        : Boat.PutRightBy(last) is { } retraction ? [new(last.Entry.Id), new(retraction.Entry.Id)]
        : [new(last.Entry.Id)];

    /// <summary>After the last reading was taken back: at its step again.</summary>
    public BoatWalk Undone(BoatInRound boat)
    {
        ReadingStep? step = Boat.Last is { } last ? ReadingStep.Of((ReadingTaken)last.Fact) : null;
        BoatWalk undone = this with { Boat = boat };
        return step is null ? undone : undone.GoTo(step);
    }

    /// <summary>The first step after one that wants reading, and from the beginning when there is none; null when none does.</summary>
    private ReadingStep? After(ReadingStep? step)
    {
        int from = IndexOf(step) + 1;
        return Order.Skip(from).Concat(Order.Take(from)).FirstOrDefault(s => !Skipped.Contains(s) && !Boat.IsRead(s));
    }

    private int IndexOf(ReadingStep? step) => step is null ? -1 : Order.ToList().IndexOf(step);
}
