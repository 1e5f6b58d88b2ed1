using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Store;

namespace Gatewright.Server.Syncing;

/// <summary>Records what a member does through the server's own pages.</summary>
internal sealed class ServerEntries(JournalStore store, OpenClubs clubs, ClubNews news, TimeProvider clock)
{
    private const string Device = "server";

    /// <summary>Whether a device's name is one of the server's own: what is recorded under it is known for that, so nobody else sends it.</summary>
    public static bool IsOwn(string device) => device is Device or CrewTold.Device;

    /// <summary>Appends facts of whoever asks, later than everything the club has: what a crew tells is known by its device.</summary>
    public Task AppendAsync(ClubAccess access, IReadOnlyList<Fact> facts, CancellationToken cancellation) =>
        AppendAsync(access.Club, access.Member, access.Role == Role.Crew ? CrewTold.Device : Device, facts, cancellation);

    /// <summary>Appends facts of a member, later than everything the club has.</summary>
    public Task AppendAsync(string club, string member, IReadOnlyList<Fact> facts, CancellationToken cancellation) =>
        AppendAsync(club, member, Device, facts, cancellation);

    private async Task AppendAsync(string club, string member, string device, IReadOnlyList<Fact> facts, CancellationToken cancellation)
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
                Device = device,
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
