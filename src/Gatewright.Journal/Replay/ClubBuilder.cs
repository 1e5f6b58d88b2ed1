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

    public ImmutableDictionary<Subject, ImmutableSortedSet<Recorded>> Shelves(
        ImmutableDictionary<Subject, ImmutableSortedSet<Recorded>> before) => Join(before, _shelves);

    public ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> Retractions(
        ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> before) => Join(before, _retractions);

    private static void File<TKey>(Dictionary<TKey, List<Recorded>> shelves, TKey key, Recorded recorded)
        where TKey : notnull
    {
        ref List<Recorded>? shelf = ref CollectionsMarshal.GetValueRefOrAddDefault(shelves, key, out _);
        shelf ??= [];
        shelf.Add(recorded);
    }

    /// <summary>A set that is made of a whole list at once is sorted once, where one that grows is balanced at every step.</summary>
    private static ImmutableDictionary<TKey, ImmutableSortedSet<Recorded>> Join<TKey>(
        ImmutableDictionary<TKey, ImmutableSortedSet<Recorded>> before, Dictionary<TKey, List<Recorded>> fresh)
        where TKey : notnull
    {
        if (fresh.Count == 0)
        {
            return before;
        }

        var all = before.ToBuilder();
        foreach ((TKey key, List<Recorded> records) in fresh)
        {
            all[key] = before.TryGetValue(key, out ImmutableSortedSet<Recorded>? set)
                ? set.Union(records)
                : ImmutableSortedSet.CreateRange(RecordedOrder.Instance, records);
        }

        return all.ToImmutable();
    }
}
