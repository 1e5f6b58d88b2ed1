namespace Gatewright.Store.Schema;

/// <summary>A club's place in the store: how far its journal has come.</summary>
public sealed class ClubRow
{
    /// <summary>The club's id.</summary>
    public required string Club { get; set; }

    /// <summary>The number of its latest entry; 0 while it has none.</summary>
    public long Last { get; set; }

    /// <summary>The hash of its latest entry: the end of the chain.</summary>
    public required byte[] Head { get; set; }
}
