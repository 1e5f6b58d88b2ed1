namespace Gatewright.Store.Blobs;

/// <summary>A picture was not taken; nothing was changed.</summary>
public sealed class BlobRefusedException(BlobRefusal refusal, string message) : Exception(message)
{
    /// <summary>Why.</summary>
    public BlobRefusal Refusal { get; } = refusal;
}
