using System.Collections.Immutable;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Replay;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Copies;

/// <summary>The own entries of a club on a device, by place. Immutable.</summary>
internal sealed class OwnEntries
{
    private readonly ImmutableSortedDictionary<long, OwnEntry> _entries;

    private OwnEntries(ImmutableSortedDictionary<long, OwnEntry> entries, IReadOnlyList<OwnRecord> unreadable) =>
        (_entries, Unreadable) = (entries, unreadable);

    public static OwnEntries Empty { get; } = new(ImmutableSortedDictionary<long, OwnEntry>.Empty, []);

    /// <summary>Those of a newer program, which this one leaves as they are.</summary>
    public IReadOnlyList<OwnRecord> Unreadable { get; }

    /// <summary>In the order in which they were recorded.</summary>
    public IEnumerable<OwnEntry> All => _entries.Values;

    /// <summary>The greatest place; 0 for none.</summary>
    public long LastPlace => Math.Max(_entries.IsEmpty ? 0 : _entries.Keys.Last(), Unreadable.Count == 0 ? 0 : Unreadable.Max(r => r.Place));

    /// <summary>What the club has of them.</summary>
    public IEnumerable<Recorded> InClub => All.Where(o => o.IsInClub).Select(o => Recorded.Of(o.Entry));

    public static OwnEntries Read(IReadOnlyList<OwnRecord> records)
    {
        var read = ImmutableSortedDictionary.CreateBuilder<long, OwnEntry>();
        var unreadable = new List<OwnRecord>();
        foreach (OwnRecord record in records)
        {
            if (OwnEntryJson.Read(record.Place, record.Text) is { } own && IsReadable(own.Entry))
            {
                read[record.Place] = own;
            }
            else
            {
                unreadable.Add(record);
            }
        }

        return new(read.ToImmutable(), unreadable);
    }

    public IReadOnlyList<OwnEntry> In(OwnState state) => [.. All.Where(o => o.State == state)];

    public OwnEntry? Find(Guid id) => All.FirstOrDefault(o => o.Entry.Id == id);

    public OwnEntries With(IEnumerable<OwnEntry> entries) =>
        new(_entries.SetItems(entries.Select(o => KeyValuePair.Create(o.Place, o))), Unreadable);

    public OwnEntries Without(IEnumerable<long> places) => new(_entries.RemoveRange(places), Unreadable);

    private static bool IsReadable(Entry entry) => Journal.Facts.FactKinds.Read(entry, out _) is not null;
}
