namespace Gatewright.Replica.Shelves;

/// <summary>From where on a club is read.</summary>
/// <param name="Number">Blocks that end after this number.</param>
/// <param name="Place">Own records after this place.</param>
/// <param name="WithSnapshot">
/// Whether to begin with the snapshot: then its number and place count, where they are greater.
/// </param>
public readonly record struct ReadFrom(long Number, long Place, bool WithSnapshot)
{
    /// <summary>The snapshot, and what came after it; everything where there is none.</summary>
    public static ReadFrom Snapshot => new(0, 0, true);

    /// <summary>Everything.</summary>
    public static ReadFrom Beginning => new(0, 0, false);
}

/// <summary>What a shelf has of a club.</summary>
/// <param name="Held">The club; null where the shelf does not hold it.</param>
/// <param name="Snapshot">The snapshot, where one was asked for and there is one.</param>
/// <param name="Blocks">What was pulled, in order; each the lines as the server wrote them.</param>
/// <param name="Own">Own records, in the order of their places.</param>
public sealed record KeptClub(
    HeldClub? Held, KeptSnapshot? Snapshot, IReadOnlyList<ReadOnlyMemory<byte>> Blocks, IReadOnlyList<OwnRecord> Own);

/// <summary>A run of a journal, without a gap.</summary>
/// <param name="After">The number before its first entry.</param>
/// <param name="Last">The number of its last.</param>
/// <param name="Lines">The lines as the server wrote them: <c>{"number","entry"}</c> each, in UTF-8, with their ends.</param>
public sealed record PulledBlock(long After, long Last, ReadOnlyMemory<byte> Lines);

/// <summary>A record of the device's own: an entry, and what became of it.</summary>
/// <param name="Place">Its place in the order in which the device recorded.</param>
/// <param name="Text">The record.</param>
public readonly record struct OwnRecord(long Place, string Text);

/// <summary>A club as bytes.</summary>
/// <param name="Number">It has the entries up to this number.</param>
/// <param name="Place">It has the own records up to this place; 0 for a club whose journal a server keeps.</param>
/// <param name="Bytes">The bytes.</param>
/// <param name="IsVouched">Whether the shelf has seen that they are what was put there: then nobody need look again.</param>
public sealed record KeptSnapshot(long Number, long Place, ReadOnlyMemory<byte> Bytes, bool IsVouched = false);

/// <summary>A picture.</summary>
/// <param name="Sha256">Its hash, in lower-case hexadecimal.</param>
/// <param name="MediaType">Such as image/jpeg.</param>
/// <param name="Bytes">What it contains.</param>
/// <param name="IsUnsent">Whether it was taken here and the server does not have it.</param>
public sealed record KeptPhoto(string Sha256, string MediaType, ReadOnlyMemory<byte> Bytes, bool IsUnsent);

/// <summary>A picture, without its bytes.</summary>
/// <param name="IsUnsent">Whether it was taken here and the server does not have it.</param>
/// <param name="Bytes">How many bytes it takes.</param>
public readonly record struct PhotoThere(bool IsUnsent, long Bytes);

/// <summary>A picture that the server has too.</summary>
/// <param name="Club">Its club.</param>
/// <param name="Sha256">Its hash.</param>
/// <param name="Bytes">How many bytes it takes here.</param>
public readonly record struct SentPhoto(string Club, string Sha256, long Bytes);
