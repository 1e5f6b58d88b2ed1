using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Views;

/// <summary>A value that a field had: who set it, when, by which entry.</summary>
/// <param name="Value">The value as entered; null when it was taken away.</param>
/// <param name="Entry">The entry that set it.</param>
/// <param name="Holds">Whether the entry holds, or was retracted.</param>
public sealed record FieldValue(string? Value, Entry Entry, bool Holds);
