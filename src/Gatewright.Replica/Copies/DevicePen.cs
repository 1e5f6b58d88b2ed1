using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Copies;

/// <summary>Writes facts as a device's entries.</summary>
internal static class DevicePen
{
    /// <summary>Facts as entries, each with the next time of the clock.</summary>
    /// <returns>The entries, without places, each with its fact as it will be read, and the clock after them.</returns>
    /// <exception cref="NotRecordedException">A fact says what cannot be.</exception>
    public static (IReadOnlyList<OwnEntry> Entries, IReadOnlyList<Recorded> Records, HybridClock After) Write(
        HeldClub club, string device, IReadOnlyList<Fact> facts, HybridClock ticking, HybridTime seen, DeviceClock clock)
    {
        var entries = new List<OwnEntry>(facts.Count);
        var records = new List<Recorded>(facts.Count);
        var problems = new List<string>();
        foreach (Fact fact in facts)
        {
            DateTimeOffset now = clock.Now;
            (HybridTime time, ticking) = ticking.Tick(now);
            (string kind, int version, byte[] body) = FactKinds.Write(fact);
            var entry = new Entry
            {
                Id = Guid.CreateVersion7(now),
                Club = club.Club,
                Member = club.Member,
                Device = device,
                Time = time,
                Kind = kind,
                Version = version,
                Body = body,
            };
            problems.AddRange(EntryRules.Problems(entry, out Fact? written));
            if (body.Length > EntryLimits.Body)
            {
                problems.Add($"the entry has {body.Length} bytes: at most {EntryLimits.Body} are taken");
            }

            records.Add(new(entry, written ?? fact));
            entries.Add(new() { Place = 0, Entry = entry, Seen = seen, IsTimeRight = clock.IsCompared });
        }

        return problems.Count == 0 ? (entries, records, ticking) : throw new NotRecordedException(problems);
    }

    /// <summary>An entry under another id, and with what else is to be changed.</summary>
    public static Entry Again(Entry entry, Guid? id = null, string? club = null, string? member = null, ReadOnlyMemory<byte>? body = null) => new()
    {
        Id = id ?? entry.Id,
        Club = club ?? entry.Club,
        Member = member ?? entry.Member,
        Device = entry.Device,
        Time = entry.Time,
        Kind = entry.Kind,
        Version = entry.Version,
        Body = body ?? entry.Body,
    };
}
