using Gatewright.Journal.Entries;

namespace Gatewright.Store.Appending;

/// <summary>An entry the journal lacks, with the number and the hash it gets.</summary>
internal readonly record struct FreshEntry(long Number, Entry Entry, byte[] Hash);
