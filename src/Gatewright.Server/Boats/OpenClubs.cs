using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Store;
using Gatewright.Store.Faults;
using Gatewright.Store.Snapshots;

namespace Gatewright.Server.Boats;

/// <summary>
/// Clubs opened from the store and kept at hand: each time one is asked for, what was appended since is added. Nothing
/// here is the truth; a server that starts anew, or another one beside it, comes to the same.
/// </summary>
internal sealed class OpenClubs(JournalStore store, SnapshotStore snapshots, SnapshotWriter writer)
{
    private const int Page = 5000;
    private const int MostClubs = 64;

    // Some 600 bytes each in memory.
    private const long MostEntries = 500_000;

    private const int Gates = 64;

    private readonly KeptClubs _kept = new(MostClubs, MostEntries);
    private readonly SemaphoreSlim[] _gates = [.. Enumerable.Range(0, Gates).Select(_ => new SemaphoreSlim(1))];

    /// <summary>A club as it is now.</summary>
    public async Task<OpenClub> OpenAsync(string club, CancellationToken cancellation)
    {
        OpenClub? kept = _kept.Find(club);
        if (kept is not null && kept.Number == await store.LastAsync(club, cancellation).ConfigureAwait(false))
        {
            return kept;
        }

        // One reads, and the others wait for what it read: a long journal read by all at once would fill the memory.
        SemaphoreSlim gate = _gates[(uint)string.GetHashCode(club, StringComparison.Ordinal) % Gates];
        await gate.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            return await ReadOnAsync(club, cancellation).ConfigureAwait(false);
        }
        finally
        {
            gate.Release();
        }
    }

    private async Task<OpenClub> ReadOnAsync(string club, CancellationToken cancellation)
    {
        OpenClub? kept = _kept.Find(club);
        long last = await store.LastAsync(club, cancellation).ConfigureAwait(false);
        if (kept?.Number == last)
        {
            return kept;
        }

        // A journal that is shorter than it was has been replaced: nothing that is known of it counts.
        OpenClub from = kept?.Number < last ? kept : await FromSnapshotAsync(club, cancellation).ConfigureAwait(false) ?? OpenClub.Of(Club.Empty(club), 0);
        OpenClub open = from.With(await TailAsync(club, from.Number, cancellation).ConfigureAwait(false));
        _kept.Keep(open);
        writer.Offer(open);
        return open;
    }

    /// <summary>All at once, since a club takes many entries together quicker than page by page.</summary>
    private async Task<List<Numbered>> TailAsync(string club, long after, CancellationToken cancellation)
    {
        var tail = new List<Numbered>();
        IReadOnlyList<Numbered> page;
        do
        {
            page = await store.ReadAsync(club, tail.Count > 0 ? tail[^1].Number : after, Page, cancellation).ConfigureAwait(false);
            tail.AddRange(page);
        }
        while (page.Count == Page);
        return tail;
    }

    private async Task<OpenClub?> FromSnapshotAsync(string club, CancellationToken cancellation)
    {
        OpenClub? open = null;
        try
        {
            if (await snapshots.GetAsync(club, cancellation).ConfigureAwait(false) is { } kept)
            {
                open = Read(club, kept);
                if (open is null)
                {
                    await snapshots.DropAsync(club, kept.Number, cancellation).ConfigureAwait(false);
                }
            }
        }
        catch (StoreException cannot) when (cannot.Fault is StoreFault.Damaged or StoreFault.Disk or StoreFault.ReadOnly)
        {
            // The journal may be sound where the snapshot cannot be read, or not be thrown away.
        }

        writer.Found(club, open?.Number ?? 0);
        return open;
    }

    private static OpenClub? Read(string club, KeptSnapshot kept)
    {
        using Stream? content = kept.Content;
        if (content is null)
        {
            return null;
        }

        try
        {
            (Club read, long number) = ClubSnapshot.Read(content);
            return read.Name == club && number == kept.Number && read.Count == number ? OpenClub.Of(read, number) : null;
        }
        catch (SnapshotException)
        {
            return null;
        }
    }
}
