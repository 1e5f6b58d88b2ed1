namespace Gatewright.Store.Faults;

/// <summary>A store could not be opened or used. Nothing that was not acknowledged is promised to be kept, all else is.</summary>
public class StoreException : Exception
{
    /// <summary>Tells what is wrong and what to do about it.</summary>
    /// <param name="fault">Which way it failed.</param>
    /// <param name="what">What is wrong, naming the place; a sentence.</param>
    /// <param name="remedy">What to do about it; a sentence.</param>
    /// <param name="cause">What the engine said.</param>
    public StoreException(StoreFault fault, string what, string remedy, Exception? cause = null)
        : base($"{what} {remedy}", cause) => (Fault, Remedy) = (fault, remedy);

    /// <summary>Which way it failed.</summary>
    public StoreFault Fault { get; }

    /// <summary>What to do about it.</summary>
    public string Remedy { get; }
}
