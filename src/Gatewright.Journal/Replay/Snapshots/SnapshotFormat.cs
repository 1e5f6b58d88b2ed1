using System.Security.Cryptography;
using System.Text;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Replay.Snapshots;

/// <summary>What a snapshot begins with and how large its blocks are.</summary>
/// <remarks>
/// A head (name and version of the format, then the fingerprint below), then blocks: length, SHA-256 of the block before
/// it and of its own bytes, and the bytes; the first holds what is said once, the others entries, and one of length 0 is
/// the end. Since each hash takes in the one before, no block can be lost, changed or moved unseen.
/// </remarks>
internal static class SnapshotFormat
{
    /// <summary>Raised whenever facts come to be filed on other shelves: a snapshot keeps the shelf each entry stands on.</summary>
    private const int Filing = 1;

    /// <summary>A block is closed when it has so many bytes.</summary>
    public const int FullBlock = 1 << 20;

    /// <summary>The most bytes of a block: a full one, and the longest entry that may have been the last to go in.</summary>
    public const int LongestBlock = FullBlock + (1 << 18);

    public static ReadOnlySpan<byte> Name => "gatewright.snapshot/1\n"u8;

    /// <summary>
    /// The kinds that this program can read, and its filing. Entries of a kind that a snapshot's maker did not know stand
    /// on no shelf of theirs in it.
    /// </summary>
    public static byte[] Fingerprint { get; } = SHA256.HashData(Encoding.UTF8.GetBytes($"{Filing} {string.Join(' ', FactKinds.NamesAndVersions)}"));

    /// <summary>The hash of a block.</summary>
    public static byte[] Hash(ReadOnlySpan<byte> before, ReadOnlySpan<byte> block)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(before);
        hash.AppendData(block);
        return hash.GetHashAndReset();
    }
}
