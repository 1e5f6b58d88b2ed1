using System.Collections.Immutable;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Replay;

/// <summary>
/// A club as its journal tells it: an immutable fold of entries whose order of arrival does not matter, since each is
/// filed by its own time and what it is about. Any two replicas with the same entries are the same club.
/// </summary>
/// <remarks>
/// What is filed is whole: views of it (a boat's fields, its open jobs) are worked out from the shelf they stand on
/// when they are asked for, so that a view added later needs no replay.
/// </remarks>
public sealed class Club
{
    private const int AtOnce = 16;

    private readonly RecordIndex _index;
    private readonly ImmutableDictionary<Subject, Shelf> _shelves;
    private readonly ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> _retractions;

    private Club(
        string name,
        RecordIndex index,
        ImmutableDictionary<Subject, Shelf> shelves,
        ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>> retractions,
        HybridTime last) =>
        (Name, _index, _shelves, _retractions, Last) = (name, index, shelves, retractions, last);

    /// <summary>The club's id.</summary>
    public string Name { get; }

    /// <summary>How many entries it has.</summary>
    public int Count => _index.Count;

    /// <summary>The greatest time of any entry: a device's clock goes on from there.</summary>
    public HybridTime Last { get; }

    /// <summary>Everything that is spoken of.</summary>
    public IEnumerable<Subject> Subjects => _shelves.Keys;

    /// <summary>A club of which nothing is recorded.</summary>
    public static Club Empty(string name) => new(
        name,
        RecordIndex.Empty,
        ImmutableDictionary<Subject, Shelf>.Empty,
        ImmutableDictionary<Guid, ImmutableSortedSet<Recorded>>.Empty,
        default);

    /// <summary>The club with an entry more; itself when it has that entry.</summary>
    /// <exception cref="ArgumentException">The entry is another club's.</exception>
    public Club With(Recorded recorded) => With([recorded]);

    /// <summary>The club with some entries more, whichever of them it had.</summary>
    /// <exception cref="ArgumentException">An entry is another club's.</exception>
    public Club With(IEnumerable<Recorded> records)
    {
        ArgumentNullException.ThrowIfNull(records);
        var builder = new ClubBuilder(Name, _index);
        foreach (Recorded recorded in records)
        {
            builder.Add(recorded);
        }

        return With(builder);
    }

    /// <summary>The same, a little at a time: where there is one thread, whoever taps meanwhile is heard.</summary>
    /// <param name="records">The entries.</param>
    /// <param name="breathe">Called after each few, and awaited.</param>
    /// <exception cref="ArgumentException">An entry is another club's.</exception>
    internal async Task<Club> WithAsync(IEnumerable<Recorded> records, Func<ValueTask> breathe)
    {
        var builder = new ClubBuilder(Name, _index);
        int added = 0;
        foreach (Recorded recorded in records)
        {
            builder.Add(recorded);
            if (++added % AtOnce == 0)
            {
                await breathe().ConfigureAwait(true);
            }
        }

        return With(builder);
    }

    /// <summary>An entry by its id, whether it holds or not; null when there is none.</summary>
    public Recorded? Find(Guid id) => _index.Find(id);

    /// <summary>All that holds on a subject, oldest first.</summary>
    public IEnumerable<Recorded> About(Subject subject) => Everything(subject).Where(r => !IsRetracted(r));

    /// <summary>All that was ever said on a subject, retracted or not, oldest first.</summary>
    public IReadOnlyCollection<Recorded> Everything(Subject subject) => _shelves.GetValueOrDefault(subject, Shelf.Empty);

    /// <summary>
    /// Whether the same was said on a subject in this club as in another, which came of it or it of that one; false where
    /// that takes more than a glance.
    /// </summary>
    public bool IsLike(Club other, Subject subject)
    {
        ArgumentNullException.ThrowIfNull(other);
        return _shelves.GetValueOrDefault(subject, Shelf.Empty).IsLike(other._shelves.GetValueOrDefault(subject, Shelf.Empty));
    }

    /// <summary>
    /// What came to a subject since the club was another, the newest of all that holds there, where nothing else came to the club;
    /// null where that takes more than a glance.
    /// </summary>
    internal IReadOnlyList<Recorded>? OnlyAdded(Club before, Subject subject) =>
        _shelves.GetValueOrDefault(subject, Shelf.Empty).Beyond(before._shelves.GetValueOrDefault(subject, Shelf.Empty)) is { } added
        && added.Count == Count - before.Count
        && !added.Any(IsRetracted)
            ? added
            : null;

    /// <summary>Every entry, oldest first.</summary>
    public IEnumerable<Recorded> All() => _index.Records.Order(RecordedOrder.Instance);

    /// <summary>
    /// Whether an entry does not hold: some later retraction of it holds. Retractions of retractions are followed;
    /// since each must be later than what it retracts, they cannot go round in a circle.
    /// </summary>
    public bool IsRetracted(Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        return _retractions.ContainsKey(recorded.Entry.Id) && RetractionSearch.IsRetracted(recorded, _retractions);
    }

    /// <summary>The club as it was at a time: of all that is known today, what had been recorded by then.</summary>
    public Club AsOf(DateTimeOffset instant) =>
        Empty(Name).With(_index.Records.Where(r => r.Entry.Time.Instant <= instant));

    private Club With(ClubBuilder builder) => builder.Changed
        ? new(Name, builder.Index, builder.Shelves(_shelves), builder.Retractions(_retractions), builder.Last > Last ? builder.Last : Last)
        : this;
}
