using Gatewright.Bench.Clubs;
using Gatewright.Core;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Store;
using Gatewright.Store.Opening;
using Gatewright.Store.Snapshots;

namespace Gatewright.Bench.Serving;

/// <summary>A long journal in a store that has its first keeper.</summary>
internal sealed record ServedJournal(StoreLocation Location, string Club, string Member, string Cookies)
{
    public const int Entries = 200_000;

    private const int Batch = 5000;
    private const int Since = 3;

    /// <summary>Has a keeper join through a server, and fills the club's journal beside it.</summary>
    /// <param name="location">The store, which is made here.</param>
    /// <param name="entries">How long the journal is to be.</param>
    public static async Task<ServedJournal> MakeAsync(StoreLocation location, int entries = Entries)
    {
        await StoreOpening.OpenAsync(location);
        ServedJournal made;
        using (RunningServer server = RunningServer.Over(location))
        {
            using var caller = new Caller(server.Address, null);
            (string club, string member) = await caller.JoinAsync(server.Secret!);
            made = new(location, club, member, caller.Cookies);
        }

        await made.AppendAsync([.. made.Beside(entries)]);
        await made.AppendAsync(0, entries);
        return made;
    }

    /// <summary>Appends entries of the long journal, by their places in it.</summary>
    public async Task AppendAsync(int from, int count)
    {
        foreach (Entry[] batch in Of(from, count).Chunk(Batch))
        {
            await AppendAsync(batch);
        }
    }

    /// <summary>Entries of the long journal as this club's keeper would have recorded them.</summary>
    public IEnumerable<Entry> Of(int from, int count) => LongJournal.Entries(from + count).Skip(from).Select(e => new Entry
    {
        Id = e.Id, Club = Club, Member = Member, Device = e.Device, Time = e.Time, Kind = e.Kind, Version = e.Version, Body = e.Body,
    });

    private Task<IReadOnlyList<long>> AppendAsync(Entry[] entries) => new JournalStore(Location).AppendAsync(Club, entries);

    /// <summary>
    /// What the long journal lacks of boats that are judged: their classes, and that each gate was mended some rounds
    /// before the end, so that a boat is judged by what was read since and not by its whole age.
    /// </summary>
    private IEnumerable<Entry> Beside(int entries)
    {
        foreach (string boat in LongJournal.Boats)
        {
            yield return Entry(0, new ThingSet(Things.Boat, boat, new Dictionary<string, string?> { ["name"] = boat, ["class"] = "8+" }));
            for (int seat = 1; seat <= 8; seat++)
            {
                yield return Entry(entries - (Since * LongJournal.Round), new GateMended(boat, seat, seat % 2 == 0 ? Side.Port : Side.Starboard));
            }
        }
    }

    private Entry Entry(int place, Fact fact)
    {
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        HybridTime time = LongJournal.At(place);
        return new()
        {
            Id = Guid.CreateVersion7(time.Instant), Club = Club, Member = Member, Device = "desk", Time = time,
            Kind = kind, Version = version, Body = body,
        };
    }

    /// <summary>Throws the snapshot away.</summary>
    public async Task DropSnapshotAsync()
    {
        var snapshots = new SnapshotStore(Location);
        if (await snapshots.GetAsync(Club) is { } kept)
        {
            await snapshots.DropAsync(Club, kept.Number);
        }
    }

    /// <summary>Waits until the server has written a snapshot.</summary>
    public async Task<(long Number, double Megabytes)> SnapshotAsync()
    {
        var snapshots = new SnapshotStore(Location);
        KeptSnapshot? kept;
        while ((kept = await snapshots.GetAsync(Club)) is null)
        {
            await Task.Delay(200);
        }

        return (kept.Number, kept.Content!.Length / 1e6);
    }
}
