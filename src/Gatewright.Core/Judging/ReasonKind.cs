namespace Gatewright.Core.Judging;

/// <summary>Which part of a standard a gate does not meet.</summary>
public enum ReasonKind
{
    /// <summary>Below a station's lowest pitch.</summary>
    BelowLimit,

    /// <summary>Above a station's highest pitch.</summary>
    AboveLimit,

    /// <summary>Below a station's floor, or not shown to be above it.</summary>
    Floor,

    /// <summary>Loses too much from catch to finish.</summary>
    Drop,

    /// <summary>Readings of one gate at one station that do not agree with each other.</summary>
    Repeats,

    /// <summary>Gate or pin reads otherwise than on a day before with nothing on record as done to it, and was not read a second time yet.</summary>
    Changed,

    /// <summary>Too far from another gate of the boat at one station.</summary>
    Range,
}
