using System.Security.Cryptography;
using Gatewright.Journal.Entries;

namespace Gatewright.Store;

/// <summary>Each entry's hash takes in the one before it, so that no entry can be changed, lost or slipped in unseen.</summary>
public static class HashChain
{
    /// <summary>What the first entry follows: 32 zero bytes.</summary>
    public static byte[] Start => new byte[SHA256.HashSizeInBytes];

    /// <summary>SHA-256 of the hash before and the entry's line.</summary>
    public static byte[] Next(ReadOnlySpan<byte> before, Entry entry)
    {
        byte[] line = EntryJson.ToLine(entry);
        byte[] both = new byte[before.Length + line.Length];
        before.CopyTo(both);
        line.CopyTo(both, before.Length);
        return SHA256.HashData(both);
    }
}
