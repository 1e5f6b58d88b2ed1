namespace Gatewright.Store.Snapshots;

/// <summary>
/// What ties a snapshot to the journal it was made from: before its bytes stands the hash that the chain had come to.
/// Since that takes in every entry before it, a snapshot of another club, of a journal that was restored since, or of
/// more entries than there are, does not fit.
/// </summary>
internal static class Tie
{
    private const int Length = 32;

    /// <summary>Whether what was kept begins with the hash of the entry it claims to end with; false where there is no such entry.</summary>
    public static bool Holds(object kept, object hash) =>
        kept is byte[] { Length: >= Length } bytes && hash is byte[] { Length: Length } end && bytes.AsSpan().StartsWith(end);

    /// <summary>The snapshot that stands after the hash.</summary>
    public static Stream After(byte[] kept) => new MemoryStream(kept, Length, kept.Length - Length, writable: false);
}
