namespace Gatewright.Journal.Entries;

/// <summary>One line of a club's journal: who recorded what, when, on which device. Never changed once made.</summary>
public sealed class Entry
{
    /// <summary>Its identity, a UUID of version 7 made by the device that recorded it.</summary>
    public required Guid Id { get; init; }

    /// <summary>The club whose journal it belongs to.</summary>
    public required string Club { get; init; }

    /// <summary>The member who recorded it, by id: names live in accounts.</summary>
    public required string Member { get; init; }

    /// <summary>The device it was recorded on.</summary>
    public required string Device { get; init; }

    /// <summary>When.</summary>
    public required HybridTime Time { get; init; }

    /// <summary>What kind of entry, such as "reading".</summary>
    public required string Kind { get; init; }

    /// <summary>Which version of its kind's body.</summary>
    public required int Version { get; init; }

    /// <summary>The body, a JSON object in UTF-8, kept to the byte: kinds this program does not know are passed on whole.</summary>
    public required ReadOnlyMemory<byte> Body { get; init; }
}
