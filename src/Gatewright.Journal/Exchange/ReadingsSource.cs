namespace Gatewright.Journal.Exchange;

/// <summary>One file of readings, or what stands for one.</summary>
/// <param name="Name">As messages call it: the file's name, or "standard input".</param>
/// <param name="Content">Its bytes. Read once from where it stands, and left open.</param>
public sealed record ReadingsSource(string Name, Stream Content);
