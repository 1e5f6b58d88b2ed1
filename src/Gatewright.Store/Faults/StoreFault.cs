namespace Gatewright.Store.Faults;

/// <summary>What keeps a store from being opened or used.</summary>
public enum StoreFault
{
    /// <summary>There is no store, or no folder or database for it.</summary>
    Missing,

    /// <summary>What lies there is not a store.</summary>
    NotAStore,

    /// <summary>It can be read but not written, or not be reached with the rights this program has.</summary>
    ReadOnly,

    /// <summary>There is no room left for what was to be written.</summary>
    Full,

    /// <summary>The disk does not do what is asked of it.</summary>
    Disk,

    /// <summary>What is kept is not what was written.</summary>
    Damaged,

    /// <summary>A newer program than this one has written it.</summary>
    Newer,

    /// <summary>The server does not let this program in.</summary>
    Refused,

    /// <summary>Others keep it busy for longer than is waited.</summary>
    Busy,

    /// <summary>The server cannot be reached, or the connection to it was lost.</summary>
    Unreachable,

    /// <summary>It holds something already, where only an empty one will do.</summary>
    NotEmpty,
}
