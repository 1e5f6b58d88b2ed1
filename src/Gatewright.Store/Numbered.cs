using Gatewright.Journal.Entries;

namespace Gatewright.Store;

/// <summary>An entry with its number in the club's journal.</summary>
/// <param name="Number">From 1, without gaps.</param>
/// <param name="Entry">The entry.</param>
public readonly record struct Numbered(long Number, Entry Entry);
