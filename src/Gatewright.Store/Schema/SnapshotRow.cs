namespace Gatewright.Store.Schema;

/// <summary>
/// A club's journal up to a number, ready to be opened. Never the truth: it can be thrown away and made again from the
/// entries.
/// </summary>
public sealed class SnapshotRow
{
    /// <summary>The club; every key starts with it. The latest snapshot replaces the one before.</summary>
    public required string Club { get; set; }

    /// <summary>The number of the last entry in it.</summary>
    public long Number { get; set; }

    /// <summary>The snapshot.</summary>
    public required byte[] Bytes { get; set; }
}
