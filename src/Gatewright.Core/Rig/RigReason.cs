using Gatewright.Core.Judging;

namespace Gatewright.Core.Rig;

/// <summary>In which way a rig misses its targets.</summary>
public enum RigReasonKind
{
    /// <summary>Below the lowest good figure.</summary>
    BelowLimit,

    /// <summary>Above the highest good figure.</summary>
    AboveLimit,

    /// <summary>Starboard less port is not what it should be.</summary>
    Sides,

    /// <summary>Too far from another seat of the boat.</summary>
    Seats,

    /// <summary>Readings of one place that do not agree with each other.</summary>
    Repeats,

    /// <summary>It was set, and nobody has taken it since: whether the setting hit is not known.</summary>
    NotTakenSince,
}

/// <summary>One ground for a verdict on a rig that is not good.</summary>
/// <param name="Verdict">The verdict this ground gives by itself.</param>
/// <param name="Kind">In which way.</param>
/// <param name="Measure">Which measure.</param>
/// <param name="Place">The place it is laid to.</param>
/// <param name="Value">What is judged, with its standard uncertainty: a figure, or a difference of two.</param>
/// <param name="Limit">The limit that it misses, in the measure's own unit; of what was only set the figure it was set to.</param>
/// <param name="Probability">That the true value lies outside the target's limits; 0 of what was only set and has no target.</param>
/// <param name="Target">The target; null for readings that do not agree, and where there is none.</param>
/// <param name="Other">The place at the other end of a difference; else null.</param>
public sealed record RigReason(
    Verdict Verdict,
    RigReasonKind Kind,
    RigMeasure Measure,
    RigPlace Place,
    RigEstimate Value,
    double Limit,
    double Probability,
    RigTarget? Target,
    RigPlace? Other = null);
