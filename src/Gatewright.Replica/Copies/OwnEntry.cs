using Gatewright.Journal.Entries;

namespace Gatewright.Replica.Copies;

/// <summary>An entry that was made on this device, and what has become of it. It is kept until it comes back from the server.</summary>
public sealed record OwnEntry
{
    /// <summary>Its place in the order in which the device recorded.</summary>
    public required long Place { get; init; }

    /// <summary>The entry.</summary>
    public required Entry Entry { get; init; }

    /// <summary>The greatest time of any entry that the device had made or seen before it.</summary>
    public HybridTime Seen { get; init; }

    /// <summary>Whether its time is that of a clock which had been compared with the server's.</summary>
    public bool IsTimeRight { get; init; }

    /// <summary>Where it stands.</summary>
    public OwnState State { get; init; }

    /// <summary>For one the server took, its number.</summary>
    public long? Number { get; init; }

    /// <summary>For one the server refused, why, for programs.</summary>
    public string? Code { get; init; }

    /// <summary>For one the server refused, why, for people.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];

    /// <summary>Whether the club has it: one that was refused is not part of it, and is shown beside it.</summary>
    public bool IsInClub => State != OwnState.Refused;

    /// <summary>Whether a journal's entry is this one, but for the time, which a clock may have been put right by since.</summary>
    internal bool IsSaidBy(Entry other) =>
        Entry.Id == other.Id
        && Entry.Member == other.Member
        && Entry.Device == other.Device
        && Entry.Kind == other.Kind
        && Entry.Version == other.Version
        && Entry.Body.Span.SequenceEqual(other.Body.Span);
}

/// <summary>Where an own entry stands.</summary>
public enum OwnState
{
    /// <summary>The server is not known to have it.</summary>
    Unsent,

    /// <summary>The server has it; it has not come back yet.</summary>
    Sent,

    /// <summary>The server does not take it. It stays here until its maker decides.</summary>
    Refused,
}
