using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Server.Boats;
using Gatewright.Store;

namespace Gatewright.Server.Syncing;

/// <summary>Records what a member does through the server's own pages.</summary>
internal sealed class ServerEntries(JournalStore store, OpenClubs clubs, ClubNews news, TimeProvider clock)
{
    /// <summary>The device such entries are of.</summary>
    public const string Device = "server";

    /// <summary>Appends facts, later than everything the club has.</summary>
    public async Task AppendAsync(string club, string member, IReadOnlyList<Fact> facts, CancellationToken cancellation)
    {
        OpenClub open = await clubs.OpenAsync(club, cancellation).ConfigureAwait(false);
        var ticking = new HybridClock(open.Club.Last);
        var entries = new List<Entry>();
        foreach (Fact fact in facts)
        {
            DateTimeOffset now = clock.GetUtcNow();
            (HybridTime time, ticking) = ticking.Tick(now);
            (string kind, int version, byte[] body) = FactKinds.Write(fact);
            entries.Add(new()
            {
                Id = Guid.CreateVersion7(now),
                Club = club,
                Member = member,
                Device = Device,
                Time = time,
                Kind = kind,
                Version = version,
                Body = body,
            });
        }

        IReadOnlyList<long> numbers = await store.AppendAsync(club, entries, cancellation).ConfigureAwait(false);
        news.Tell(club, numbers[^1]);
    }
}
