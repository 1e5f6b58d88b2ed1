namespace Gatewright.Store.Blobs;

/// <summary>A picture, to be read.</summary>
/// <param name="About">What is known of it.</param>
/// <param name="Content">Its bytes; belongs to whoever asked for it.</param>
public sealed record OpenedBlob(KeptBlob About, Stream Content);
