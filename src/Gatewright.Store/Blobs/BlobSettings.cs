namespace Gatewright.Store.Blobs;

/// <summary>How much is kept of pictures.</summary>
/// <param name="MostBytes">Bytes of one picture, at most; 8 MiB.</param>
/// <param name="MostBytesOfClub">Bytes of all pictures of a club, at most; 2 GiB.</param>
public sealed record BlobSettings(long MostBytes = 8L << 20, long MostBytesOfClub = 2L << 30)
{
    /// <summary>8 MiB a picture, 2 GiB a club.</summary>
    public static BlobSettings Default { get; } = new();
}
