namespace Gatewright.Journal.Exchange;

/// <summary>A column of a file of readings.</summary>
/// <param name="Name">Its name in the header; case, spaces, hyphens and underscores do not matter.</param>
/// <param name="IsRequired">Whether a file of readings has to have it.</param>
/// <param name="Words">The words it takes, where it takes words of ours; it may take numbers or names beside them.</param>
public sealed record ReadingsColumn(string Name, bool IsRequired, IReadOnlyList<string> Words);
