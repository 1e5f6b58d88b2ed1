using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Facts;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>What files say that a club does not know yet, as entries of its journal.</summary>
internal static class RecordedEntries
{
    private const string Device = "terminal";

    /// <summary>The entries; a name or an id that no journal takes is an error.</summary>
    public static IReadOnlyList<Entry> Of(RecordInput input, OpenedClub club, RecordRequest request, List<InputProblem> errors)
    {
        DateTimeOffset now = DateTimeOffset.UtcNow;
        var stamp = new RecordingStamp(request.Member, Device, default, now, () => Guid.CreateVersion7(now));
        var entries = new List<Entry>();
        HybridClock clock = new HybridClock().Seen(club.Club.Last);
        if (request.NewClub is { } name && club.Name != name)
        {
            entries.Add(Named(club.Id, name, stamp, ref clock));
        }

        if (input.Readings is { } readings)
        {
            Add(ReadingsRecording.Entries(readings, club.Club, stamp with { Clock = clock }));
        }

        if (input.Stores is { } stores)
        {
            Add(ReadingsRecording.Entries(stores.Stores, club.Club, stamp with { Clock = clock }));
        }

        if (input.Oars is { } oars)
        {
            // A boat that the file of readings has just made is the same boat.
            Add(OarsRecording.Entries(oars, club.Club.With(entries.Select(Journal.Replay.Recorded.Of)), stamp with { Clock = clock }));
        }

        errors.AddRange(entries.SelectMany(Problems).Distinct().Select(p => new InputProblem("record", null, null, null, p)));
        return entries;

        void Add(RecordedFile file)
        {
            entries.AddRange(file.Entries);
            clock = file.After;
        }
    }

    private static Entry Named(string club, string name, RecordingStamp stamp, ref HybridClock clock)
    {
        (HybridTime time, clock) = clock.Tick(stamp.Now);
        (string kind, int version, byte[] body) = FactKinds.Write(
            new ThingSet(Things.Settings, "club", new Dictionary<string, string?> { ["name"] = name }));
        return new()
        {
            Id = stamp.NewId(), Club = club, Member = stamp.Member, Device = stamp.Device, Time = time, Kind = kind, Version = version, Body = body,
        };
    }

    /// <summary>As strict as the server is with what devices send.</summary>
    private static IEnumerable<string> Problems(Entry entry)
    {
        _ = EntryJson.Read(EntryJson.ToLine(entry), out IReadOnlyList<string> envelope);
        return [.. envelope, .. EntryRules.Problems(entry)];
    }
}
