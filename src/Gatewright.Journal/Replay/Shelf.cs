using System.Collections;
using System.Collections.Immutable;

namespace Gatewright.Journal.Replay;

/// <summary>
/// All that was said on a subject, oldest first, immutable: a plain row of what came in bulk, which is quick to walk, and
/// beside it a tree of what came since, which is quick to grow by one.
/// </summary>
internal sealed class Shelf : IReadOnlyCollection<Recorded>
{
    private static readonly ImmutableSortedSet<Recorded> None = ImmutableSortedSet.Create<Recorded>(RecordedOrder.Instance);

    /// <summary>Below this a tree is as quick.</summary>
    private const int SmallestBulk = 64;

    private readonly Recorded[] _bulk;
    private readonly ImmutableSortedSet<Recorded> _since;

    private Shelf(Recorded[] bulk, ImmutableSortedSet<Recorded> since) => (_bulk, _since) = (bulk, since);

    public static Shelf Empty { get; } = new([], None);

    public int Count => _bulk.Length + _since.Count;

    /// <summary>These and others, none of which is here yet.</summary>
    /// <remarks>The row is made anew only for so many at once that its making is no more than a few times their own number.</remarks>
    public Shelf With(List<Recorded> others) => others.Count < SmallestBulk || others.Count < Count / 4
        ? new(_bulk, _since.Union(others))
        : new(InOrder(Count == 0 ? [.. others] : [.. this, .. others]), None);

    /// <summary>Whether another has the same entries, though the newest of them may have been read anew; false where that is not seen at a glance.</summary>
    public bool IsLike(Shelf other) => ReferenceEquals(_since, other._since)
        ? ReferenceEquals(_bulk, other._bulk)
        : ReferenceEquals(_bulk, other._bulk) && _since.Count == other._since.Count && _since.Zip(other._since).All(pair => pair.First.IsLike(pair.Second));

    /// <summary>What stands at the end of this one beyond another; null where it is not that one with some more at its end.</summary>
    public IReadOnlyList<Recorded>? Beyond(Shelf other)
    {
        int before = other._since.Count;
        if (!ReferenceEquals(_bulk, other._bulk) || _since.Count < before)
        {
            return null;
        }

        for (int place = 0; place < before; place++)
        {
            if (!_since[place].IsLike(other._since[place]))
            {
                return null;
            }
        }

        var added = new List<Recorded>(_since.Count - before);
        for (int place = before; place < _since.Count; place++)
        {
            added.Add(_since[place]);
        }

        return added.Count == 0 || _bulk.Length == 0 || Compare(_bulk[^1], added[0]) < 0 ? added : null;
    }

    public IEnumerator<Recorded> GetEnumerator()
    {
        if (_since.IsEmpty)
        {
            return ((IEnumerable<Recorded>)_bulk).GetEnumerator();
        }

        return (_bulk.Length == 0 || Compare(_bulk[^1], _since.Min!) < 0 ? _bulk.Concat(_since) : Merged()).GetEnumerator();
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>What comes from a snapshot is in order already, and a look tells so sooner than a sort.</summary>
    private static Recorded[] InOrder(Recorded[] records)
    {
        for (int i = 1; i < records.Length; i++)
        {
            if (Compare(records[i - 1], records[i]) >= 0)
            {
                Array.Sort(records, RecordedOrder.Instance);
                break;
            }
        }

        return records;
    }

    private static int Compare(Recorded one, Recorded other) => RecordedOrder.Instance.Compare(one, other);

    private IEnumerable<Recorded> Merged()
    {
        int next = 0;
        foreach (Recorded since in _since)
        {
            for (; next < _bulk.Length && Compare(_bulk[next], since) < 0; next++)
            {
                yield return _bulk[next];
            }

            yield return since;
        }

        for (; next < _bulk.Length; next++)
        {
            yield return _bulk[next];
        }
    }
}
