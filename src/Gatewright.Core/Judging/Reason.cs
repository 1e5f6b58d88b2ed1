using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Judging;

/// <summary>One ground for a verdict that is not good.</summary>
/// <param name="Verdict">The verdict this ground gives by itself.</param>
/// <param name="Kind">Which part of the standard.</param>
/// <param name="Station">The station; for a drop, the finish; for a pin, abeam.</param>
/// <param name="Value">
/// What is judged, with its standard uncertainty: a pitch, a drop, a difference of two gates, or of two readings of one gate or pin.
/// </param>
/// <param name="Limit">The limit or floor of the standard.</param>
/// <param name="Probability">That the true value lies on the wrong side of it.</param>
/// <param name="Read">Whether the value was read there, or is what other readings let one expect.</param>
/// <param name="Other">For a range, the gate at the other end of it.</param>
public sealed record Reason(
    Verdict Verdict,
    ReasonKind Kind,
    Station Station,
    Estimate Value,
    Angle Limit,
    double Probability,
    bool Read,
    GatePlace? Other = null)
{
    /// <summary>What was read; for a change, which of the gate and its pin reads otherwise.</summary>
    public ReadItem Item { get; init; } = ReadItem.Gate;

    /// <summary>
    /// For a change, the last day whose readings of the gate no longer count; for a floor, the day of the reading that is its value,
    /// where that no longer counts and nothing that was read there since contradicts it.
    /// </summary>
    public DateOnly? Before { get; init; }

    /// <summary>
    /// For a floor, whether the value is not what the gate reads but one of two readings that contradict each other, or one from
    /// before a change that nothing confirms: while nobody can tell which is right, the lower may be.
    /// </summary>
    public bool IsOneReading { get; init; }
}
