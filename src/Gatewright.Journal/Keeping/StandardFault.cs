namespace Gatewright.Journal.Keeping;

/// <summary>What is wrong with a number of a standard.</summary>
public enum StandardFault
{
    /// <summary>It is not a number of degrees from −30 to 30, or for a drop or a range from 0 to 30.</summary>
    OutOfRange,

    /// <summary>The floor lies above the lowest good pitch.</summary>
    FloorAboveLowest,

    /// <summary>The lowest good pitch lies above the highest.</summary>
    LowestAboveHighest,
}
