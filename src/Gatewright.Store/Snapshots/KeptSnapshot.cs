namespace Gatewright.Store.Snapshots;

/// <summary>A snapshot as the store has it.</summary>
/// <param name="Number">The number of the last entry in it.</param>
/// <param name="Content">The snapshot; null where its last entry is not the one that the journal has under that number.</param>
public sealed record KeptSnapshot(long Number, Stream? Content);
