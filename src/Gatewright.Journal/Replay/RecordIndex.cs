using System.Collections.Immutable;

namespace Gatewright.Journal.Replay;

/// <summary>
/// Records by id, immutable: one table for what came in bulk, which is quick to fill, and beside it a tree for what came
/// since, which is quick to grow by one.
/// </summary>
internal sealed class RecordIndex
{
    /// <summary>Below this a tree is as quick.</summary>
    private const int SmallestBulk = 64;

    private readonly Dictionary<Guid, Recorded> _bulk;
    private readonly ImmutableDictionary<Guid, Recorded> _since;

    private RecordIndex(Dictionary<Guid, Recorded> bulk, ImmutableDictionary<Guid, Recorded> since) => (_bulk, _since) = (bulk, since);

    public static RecordIndex Empty { get; } = new([], ImmutableDictionary<Guid, Recorded>.Empty);

    public int Count => _bulk.Count + _since.Count;

    public IEnumerable<Recorded> Records => _bulk.Values.Concat(_since.Values);

    public Recorded? Find(Guid id) => _since.TryGetValue(id, out Recorded? found) ? found : _bulk.GetValueOrDefault(id);

    public bool Contains(Guid id) => _bulk.ContainsKey(id) || _since.ContainsKey(id);

    /// <summary>These and others, none of which is here yet. The others are this index's own from then on.</summary>
    /// <remarks>The table is made anew only for so many at once that its making is no more than a few times their own number.</remarks>
    public RecordIndex With(Dictionary<Guid, Recorded> others)
    {
        if (others.Count < SmallestBulk || others.Count < Count / 4)
        {
            return new(_bulk, _since.AddRange(others));
        }

        if (Count == 0)
        {
            return new(others, _since);
        }

        var all = new Dictionary<Guid, Recorded>(Count + others.Count);
        foreach ((Guid id, Recorded record) in _bulk.Concat(_since).Concat(others))
        {
            all.Add(id, record);
        }

        return new(all, ImmutableDictionary<Guid, Recorded>.Empty);
    }
}
