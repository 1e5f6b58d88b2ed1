namespace Gatewright.Journal.Exchange.Archive;

/// <summary>A photo, beside the entries that name it by its hash.</summary>
/// <param name="Sha256">Its SHA-256 in lower-case hexadecimal.</param>
/// <param name="MediaType">Such as image/jpeg.</param>
/// <param name="Open">Opens its bytes; whoever opens closes.</param>
public sealed record ArchiveBlob(string Sha256, string MediaType, Func<CancellationToken, ValueTask<Stream>> Open);
