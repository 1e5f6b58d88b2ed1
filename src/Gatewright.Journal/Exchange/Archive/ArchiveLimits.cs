using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>How much of a club's file is taken. Counted while it is unpacked, never by what the file says of itself.</summary>
public sealed record ArchiveLimits
{
    /// <summary>The defaults.</summary>
    public static ArchiveLimits Default { get; } = new();

    /// <summary>Entries: 2,000,000.</summary>
    public long Entries { get; init; } = 2_000_000;

    /// <summary>Photos: 50,000.</summary>
    public int Blobs { get; init; } = 50_000;

    /// <summary>Bytes of a photo: as in an entry.</summary>
    public long BlobBytes { get; init; } = EntryRules.LargestPhoto;

    /// <summary>Bytes of all members together, unpacked: 16 GiB.</summary>
    public long TotalBytes { get; init; } = 16L << 30;

    /// <summary>How many times its packed size a file may have unpacked, beyond a first <see cref="FreeBytes"/>: 100.</summary>
    public int Ratio { get; init; } = 100;

    /// <summary>Bytes that may come of a file however small it is: 4 MiB.</summary>
    public long FreeBytes { get; init; } = 4 << 20;

    /// <summary>Problems that are told one by one: 100.</summary>
    public int Problems { get; init; } = 100;
}
