namespace Gatewright.Journal.Exchange.Archive;

/// <summary>What a club's file says of itself, in club.json.</summary>
/// <param name="Club">The club's id.</param>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Last">The number of the last entry.</param>
/// <param name="Head">The hash of the last entry, which takes in all before it, in lower-case hexadecimal.</param>
/// <param name="Program">The program and version that wrote it.</param>
public sealed record ArchiveHead(string Club, long Entries, long Last, string Head, string Program);
