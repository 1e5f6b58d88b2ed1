namespace Gatewright.Journal.Rounds;

/// <summary>Why a boat is due to be read. What presses most stands first.</summary>
public enum DueReason
{
    /// <summary>It was judged `stop`, or is to stay ashore until it is read again.</summary>
    Ashore,

    /// <summary>It was judged `adjust`.</summary>
    Adjust,

    /// <summary>Something was told of it and is not seen to: a knock, a crab.</summary>
    Told,

    /// <summary>It was mended or changed, and not read since.</summary>
    Changed,

    /// <summary>It was never read.</summary>
    Never,

    /// <summary>Its readings leave it in doubt.</summary>
    Doubt,

    /// <summary>It was not read for long.</summary>
    LongAgo,
}
