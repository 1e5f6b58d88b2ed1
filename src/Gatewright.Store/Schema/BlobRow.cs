namespace Gatewright.Store.Schema;

/// <summary>A picture, kept by what it contains.</summary>
public sealed class BlobRow
{
    /// <summary>The club; every key starts with it.</summary>
    public required string Club { get; set; }

    /// <summary>The SHA-256 of its bytes, in lower-case hexadecimal.</summary>
    public required string Sha256 { get; set; }

    /// <summary>Such as image/jpeg.</summary>
    public required string MediaType { get; set; }

    /// <summary>The picture.</summary>
    public required byte[] Bytes { get; set; }
}
