using System.Collections.Immutable;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Replay;

/// <summary>A club while entries are filed: many at once cost little more than their sorting.</summary>
internal sealed class ClubBuilder(
    string club,
    ImmutableDictionary<Guid, Recorded> byId,
    ImmutableDictionary<Subject, ImmutableSortedSet<Recorded>> shelves,
    ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> retractions,
    HybridTime last)
{
    private readonly ImmutableDictionary<Guid, Recorded>.Builder _byId = byId.ToBuilder();
    private readonly ImmutableDictionary<Subject, ImmutableSortedSet<Recorded>>.Builder _shelves = shelves.ToBuilder();
    private readonly ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>>.Builder _retractions = retractions.ToBuilder();
    private readonly Dictionary<Subject, ImmutableSortedSet<Recorded>.Builder> _openShelves = [];
    private readonly Dictionary<Guid, ImmutableSortedSet<Recorded>.Builder> _openRetractions = [];

    public bool Changed { get; private set; }

    public HybridTime Last { get; private set; } = last;

    public ImmutableDictionary<Guid, Recorded> ById => _byId.ToImmutable();

    public ImmutableDictionary<Subject, ImmutableSortedSet<Recorded>> Shelves => Close(_openShelves, _shelves);

    public ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> Retractions => Close(_openRetractions, _retractions);

    public void Add(Recorded recorded)
    {
        if (recorded.Entry.Club != club)
        {
            throw new ArgumentException($"Entry {recorded.Entry.Id} is of club {recorded.Entry.Club}, not of {club}.", nameof(recorded));
        }

        if (!_byId.TryAdd(recorded.Entry.Id, recorded))
        {
            return;
        }

        Changed = true;
        Last = recorded.Entry.Time > Last ? recorded.Entry.Time : Last;
        Open(_openShelves, _shelves, Subject.Of(recorded.Fact)).Add(recorded);
        if (recorded.Fact is Retracted retracted)
        {
            Open(_openRetractions, _retractions, retracted.Entry).Add(recorded);
        }
    }

    private static ImmutableSortedSet<Recorded>.Builder Open<TKey>(
        Dictionary<TKey, ImmutableSortedSet<Recorded>.Builder> open,
        ImmutableDictionary<TKey, ImmutableSortedSet<Recorded>>.Builder closed,
        TKey key)
        where TKey : notnull
    {
        if (!open.TryGetValue(key, out ImmutableSortedSet<Recorded>.Builder? builder))
        {
            builder = closed.TryGetValue(key, out ImmutableSortedSet<Recorded>? set)
                ? set.ToBuilder()
                : ImmutableSortedSet.CreateBuilder(RecordedOrder.Instance);
            open.Add(key, builder);
        }

        return builder;
    }

    private static ImmutableDictionary<TKey, ImmutableSortedSet<Recorded>> Close<TKey>(
        Dictionary<TKey, ImmutableSortedSet<Recorded>.Builder> open,
        ImmutableDictionary<TKey, ImmutableSortedSet<Recorded>>.Builder closed)
        where TKey : notnull
    {
        foreach ((TKey key, ImmutableSortedSet<Recorded>.Builder set) in open)
        {
            closed[key] = set.ToImmutable();
        }

        return closed.ToImmutable();
    }
}
