using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// A boat's rig being measured: one measure after the other with one tool in the hand, each along the boat, the next from
/// where the last one ended. What was taken since the walk began is read from the journal, so that nothing of it is lost.
/// </summary>
public sealed class RigWalk
{
    private readonly HashSet<RigStep> _done = [];
    private readonly HybridTime _since;

    private RigWalk(RigView rig, IReadOnlyList<RigStep> order, HybridTime since, RigStep? at)
    {
        (Rig, Order, _since) = (rig, order, since);
        var taken = new List<TakenMeasure>();
        foreach (TakenMeasure one in rig.Taken)
        {
            if (one.Record.Entry.Time > since && order.Contains(StepOf(one)))
            {
                taken.Add(one);
                _done.Add(StepOf(one));
            }
        }

        Taken = taken;
        Now = at ?? Next(order.Count - 1);
    }

    /// <summary>What is on record of the rig.</summary>
    public RigView Rig { get; }

    /// <summary>All that is asked for, in working order.</summary>
    public IReadOnlyList<RigStep> Order { get; }

    /// <summary>What was taken of it on this walk, oldest first.</summary>
    public IReadOnlyList<TakenMeasure> Taken { get; }

    /// <summary>What is measured now; null once everything was.</summary>
    public RigStep? Now { get; }

    /// <summary>How many places have been measured on this walk.</summary>
    public int Done => _done.Count;

    /// <summary>A walk that goes on, or begins.</summary>
    /// <param name="rig">What is on record.</param>
    /// <param name="measures">What is to be measured.</param>
    /// <param name="since">The club's last time when it began: what came later is of this walk.</param>
    public static RigWalk Of(RigView rig, IReadOnlyCollection<RigMeasure> measures, HybridTime since)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(measures);
        return new(rig, OrderOf(rig, measures), since, null);
    }

    /// <summary>Whether a place has been measured on this walk.</summary>
    public bool IsDone(RigStep step) => _done.Contains(step);

    /// <summary>The walk after something was recorded: what is measured next is the next that is not done.</summary>
    public RigWalk Recorded(RigView rig)
    {
        var walk = new RigWalk(rig, Order, _since, null);
        return new(rig, Order, _since, walk.Next(IndexOf(Now)));
    }

    /// <summary>The walk over a newer record, at the same place.</summary>
    public RigWalk With(RigView rig) => new(rig, Order, _since, Now);

    /// <summary>Goes to a place; to none that is not asked for.</summary>
    public RigWalk GoTo(RigStep step) => Order.Contains(step) ? new(Rig, Order, _since, step) : this;

    /// <summary>Passes over what is measured now; the last that is left is asked for again.</summary>
    public RigWalk Skip() => new(Rig, Order, _since, Next(IndexOf(Now)) ?? Now);

    /// <summary>Goes so many steps along the order, round its ends.</summary>
    public RigWalk Move(int steps) => Order.Count == 0 ? this
        : new(Rig, Order, _since, Order[(((IndexOf(Now) + steps) % Order.Count) + Order.Count) % Order.Count]);

    /// <summary>What a measure was taken as.</summary>
    public static RigStep StepOf(TakenMeasure taken)
    {
        ArgumentNullException.ThrowIfNull(taken);
        return new(taken.Reading.Measure, taken.Reading.Place);
    }

    private int IndexOf(RigStep? step)
    {
        for (int i = 0; i < Order.Count; i++)
        {
            if (Order[i] == step)
            {
                return i;
            }
        }

        return Order.Count - 1;
    }

    private RigStep? Next(int from)
    {
        for (int i = 1; i <= Order.Count; i++)
        {
            RigStep step = Order[(from + i) % Order.Count];
            if (!_done.Contains(step))
            {
                return step;
            }
        }

        return null;
    }

    /// <summary>A seat's measure goes to the other end of the boat; a side's down port and back along starboard.</summary>
    private static List<RigStep> OrderOf(RigView rig, IReadOnlyCollection<RigMeasure> measures)
    {
        var order = new List<RigStep>();
        bool isAtStern = false;
        foreach (RigMeasure measure in RigMeasures.All)
        {
            IReadOnlyList<RigPlace> places = measures.Contains(measure) ? rig.Places(measure) : [];
            if (places.Count == 0)
            {
                continue;
            }

            if (measure.HasSide())
            {
                Add(order, measure, places, Side.Port, isAtStern);
                Add(order, measure, places, Side.Starboard, !isAtStern);
            }
            else
            {
                Add(order, measure, places, null, isAtStern);
                isAtStern = !isAtStern;
            }
        }

        return order;
    }

    private static void Add(List<RigStep> order, RigMeasure measure, IReadOnlyList<RigPlace> places, Side? side, bool isFromStern)
    {
        for (int i = 0; i < places.Count; i++)
        {
            RigPlace place = places[isFromStern ? places.Count - 1 - i : i];
            if (place.Side == side)
            {
                order.Add(new(measure, place));
            }
        }
    }
}
