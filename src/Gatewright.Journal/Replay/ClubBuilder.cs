using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Replay;

/// <summary>What comes to a club, sorted by shelf: many at once cost little more than their sorting.</summary>
internal sealed class ClubBuilder(string club, RecordIndex known)
{
    private readonly Dictionary<Guid, Recorded> _fresh = [];
    private readonly Dictionary<Subject, List<Recorded>> _shelves = [];
    private readonly Dictionary<Guid, List<Recorded>> _retractions = [];

    public bool Changed => _fresh.Count > 0;

    /// <summary>The greatest time of what came.</summary>
    public HybridTime Last { get; private set; }

    public RecordIndex Index => known.With(_fresh);

    public void Add(Recorded recorded)
    {
        Entry entry = recorded.Entry;
        if (entry.Club != club)
        {
            throw new ArgumentException($"Entry {entry.Id} is of club {entry.Club}, not of {club}.", nameof(recorded));
        }

        if (known.Contains(entry.Id) || !_fresh.TryAdd(entry.Id, recorded))
        {
            return;
        }

        Last = entry.Time > Last ? entry.Time : Last;
        File(_shelves, recorded.About, recorded);
        if (recorded.Retracts is { } target)
        {
            File(_retractions, target, recorded);
        }
    }

    public ImmutableDictionary<Subject, Shelf> Shelves(ImmutableDictionary<Subject, Shelf> before) =>
        Join(before, _shelves, (shelf, records) => (shelf ?? Shelf.Empty).With(records));

    public ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> Retractions(
        ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> before) =>
        Join(before, _retractions, (set, records) => set?.Union(records) ?? ImmutableSortedSet.CreateRange(RecordedOrder.Instance, records));

    private static void File<TKey>(Dictionary<TKey, List<Recorded>> shelves, TKey key, Recorded recorded)
        where TKey : notnull
    {
        ref List<Recorded>? shelf = ref CollectionsMarshal.GetValueRefOrAddDefault(shelves, key, out _);
        shelf ??= [];
        shelf.Add(recorded);
    }

    private static ImmutableDictionary<TKey, TShelf> Join<TKey, TShelf>(
        ImmutableDictionary<TKey, TShelf> before, Dictionary<TKey, List<Recorded>> fresh, Func<TShelf?, List<Recorded>, TShelf> with)
        where TKey : notnull
        where TShelf : class
    {
        if (fresh.Count == 0)
        {
            return before;
        }

        var all = before.ToBuilder();
        foreach ((TKey key, List<Recorded> records) in fresh)
        {
            all[key] = with(before.GetValueOrDefault(key), records);
        }

        return all.ToImmutable();
    }
}
