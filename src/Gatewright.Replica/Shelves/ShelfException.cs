namespace Gatewright.Replica.Shelves;

/// <summary>A shelf could not do what was asked. Nothing was changed.</summary>
/// <param name="fault">Why.</param>
/// <param name="message">What happened, for people.</param>
/// <param name="cause">What lies behind it.</param>
public sealed class ShelfException(ShelfFault fault, string message, Exception? cause = null) : Exception(message, cause)
{
    /// <summary>Why.</summary>
    public ShelfFault Fault { get; } = fault;
}

/// <summary>Why a shelf could not do what was asked.</summary>
public enum ShelfFault
{
    /// <summary>There is no room: the browser gives no more. What was to be kept is not.</summary>
    Full,

    /// <summary>A newer program has given the shelf another shape: this one no longer reads it.</summary>
    Closed,

    /// <summary>What is there cannot be read.</summary>
    Damaged,
}
