using System.Collections.Concurrent;
using Gatewright.Journal.Replay;
using Gatewright.Store;

namespace Gatewright.Server.Boats;

/// <summary>
/// Clubs opened from the store and kept at hand: each time one is asked for, what was appended since is added. Nothing
/// here is the truth; a server that starts anew, or another one beside it, comes to the same.
/// </summary>
internal sealed class OpenClubs(JournalStore store)
{
    private const int Page = 5000;
    private const int MostKept = 64;

    private readonly ConcurrentDictionary<string, OpenClub> _open = [];

    /// <summary>A club as it is now.</summary>
    public async Task<OpenClub> OpenAsync(string club, CancellationToken cancellation)
    {
        OpenClub open = _open.TryGetValue(club, out OpenClub? kept) ? kept : new(Club.Empty(club), 0);
        long from = open.Number;
        IReadOnlyList<Numbered> page;
        do
        {
            page = await store.ReadAsync(club, open.Number, Page, cancellation).ConfigureAwait(false);
            if (page.Count > 0)
            {
                open = new(open.Club.With(page.Select(n => Recorded.Of(n.Entry))), page[^1].Number);
            }
        }
        while (page.Count == Page);
        if (open.Number > from)
        {
            Keep(open);
        }

        return open;
    }

    /// <summary>Forgets a club, as after it was restored from elsewhere.</summary>
    public void Forget(string club) => _open.TryRemove(club, out _);

    private void Keep(OpenClub open)
    {
        if (_open.Count >= MostKept && !_open.ContainsKey(open.Club.Name) && _open.Keys.FirstOrDefault() is { } other)
        {
            _open.TryRemove(other, out _);
        }

        // Of two who read on at once the one who came further is kept.
        _open.AddOrUpdate(open.Club.Name, open, (_, before) => before.Number > open.Number ? before : open);
    }
}
