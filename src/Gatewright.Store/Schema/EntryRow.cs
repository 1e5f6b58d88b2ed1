namespace Gatewright.Store.Schema;

/// <summary>An entry as it is kept, with the number the store gave it.</summary>
public sealed class EntryRow
{
    /// <summary>The club; every key starts with it.</summary>
    public required string Club { get; set; }

    /// <summary>Its number in the club's journal, from 1, without gaps.</summary>
    public long Number { get; set; }

    /// <summary>The entry's own identity.</summary>
    public Guid Id { get; set; }

    /// <summary>Who recorded it.</summary>
    public required string Member { get; set; }

    /// <summary>On which device.</summary>
    public required string Device { get; set; }

    /// <summary>When: milliseconds of its hybrid time.</summary>
    public long Milliseconds { get; set; }

    /// <summary>When: the counter of its hybrid time.</summary>
    public int Counter { get; set; }

    /// <summary>Its kind.</summary>
    public required string Kind { get; set; }

    /// <summary>The version of its kind.</summary>
    public int Version { get; set; }

    /// <summary>Its body, to the byte.</summary>
    public required byte[] Body { get; set; }

    /// <summary>The hash of the entry and of the one before it.</summary>
    public required byte[] Hash { get; set; }
}
