namespace Gatewright.Store.Blobs;

/// <summary>What is known of a picture that is kept.</summary>
/// <param name="Sha256">Its SHA-256, in lower-case hexadecimal.</param>
/// <param name="MediaType">One of <see cref="MediaTypes.All"/>.</param>
/// <param name="Bytes">Its size.</param>
public sealed record KeptBlob(string Sha256, string MediaType, long Bytes);
