namespace Gatewright.Journal.Exchange;

/// <summary>What a row says about the level of its boat.</summary>
internal enum LevelSource
{
    /// <summary>Nothing: what other rows of the lying say, else by eye.</summary>
    Blank,

    /// <summary>Two angles.</summary>
    Read,

    /// <summary>The bubble was centred.</summary>
    Bubble,

    /// <summary>By eye, whatever other rows of the lying say.</summary>
    Eye,

    /// <summary>As the rack lies, whatever other rows of the lying say.</summary>
    Rack,
}
