namespace Gatewright.Journal.Facts;

/// <summary>A note on a thing.</summary>
/// <param name="Thing">What kind of thing.</param>
/// <param name="Key">Which one.</param>
/// <param name="Text">The note.</param>
public sealed record Noted(string Thing, string Key, string Text) : Fact;

/// <summary>A photo of a thing; the picture itself is kept by its hash.</summary>
/// <param name="Thing">What kind of thing.</param>
/// <param name="Key">Which one.</param>
/// <param name="Sha256">The picture's SHA-256, in lower-case hexadecimal.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="MediaType">Such as image/jpeg.</param>
public sealed record PhotoTaken(string Thing, string Key, string Sha256, long Bytes, string MediaType) : Fact;
