using Gatewright.Core;

namespace Gatewright.Journal.Facts;

/// <summary>A note on a thing.</summary>
/// <param name="Thing">What kind of thing.</param>
/// <param name="Key">Which one.</param>
/// <param name="Text">The note; of damage all that was told, in the language of whoever told it.</param>
/// <param name="Damage">What is told of something broken; null in any other note, and in older entries.</param>
public sealed record Noted(string Thing, string Key, string Text, DamageTold? Damage = null) : Fact;

/// <summary>Damage, apart from the language it was told in.</summary>
/// <param name="Seat">The seat, where it is at a gate.</param>
/// <param name="Side">The side, where it is at a gate.</param>
/// <param name="Text">In the words of whoever told it; null for none.</param>
public sealed record DamageTold(int? Seat = null, Side? Side = null, string? Text = null);

/// <summary>A photo of a thing; the picture itself is kept by its hash.</summary>
/// <param name="Thing">What kind of thing.</param>
/// <param name="Key">Which one.</param>
/// <param name="Sha256">The picture's SHA-256, in lower-case hexadecimal.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="MediaType">Such as image/jpeg.</param>
public sealed record PhotoTaken(string Thing, string Key, string Sha256, long Bytes, string MediaType) : Fact;
