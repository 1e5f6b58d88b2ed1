namespace Gatewright.Journal.Entries;

/// <summary>How large an entry and its parts may be.</summary>
public static class EntryLimits
{
    /// <summary>Characters in the id of a club, a member or a device, and in a kind: 64.</summary>
    public const int Name = 64;

    /// <summary>Bytes of a body: 64 KiB. Pictures are kept beside the journal, by hash.</summary>
    public const int Body = 64 * 1024;

    /// <summary>Bytes of a whole line: the body and what surrounds it.</summary>
    public const int Line = Body + 4096;

    /// <summary>How deep a body may be nested: 16.</summary>
    public const int Depth = 16;

    /// <summary>The latest time an entry can have, 9999-12-31.</summary>
    public static long LatestMilliseconds { get; } = DateTimeOffset.MaxValue.ToUnixTimeMilliseconds();
}
