namespace Gatewright.Store.Faults;

/// <summary>
/// The store could not do it now, and may be able to in a while: the same call can be made again. Whether the call
/// took effect is not known; an append may be repeated, since what the journal has already changes nothing.
/// </summary>
public sealed class StoreUnavailableException : StoreException
{
    /// <summary>Tells what is wrong.</summary>
    /// <param name="fault"><see cref="StoreFault.Busy"/> or <see cref="StoreFault.Unreachable"/>.</param>
    /// <param name="what">What is wrong, naming the place; a sentence.</param>
    /// <param name="cause">What the engine said.</param>
    public StoreUnavailableException(StoreFault fault, string what, Exception? cause = null)
        : base(fault, what, "Try again in a few seconds.", cause)
    {
    }

    /// <summary>How long to wait before trying again: 2 seconds.</summary>
    public TimeSpan RetryAfter { get; } = TimeSpan.FromSeconds(2);
}
