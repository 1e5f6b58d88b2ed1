using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>One item of a rig as it is known: value and standard uncertainty in centimetres or degrees.</summary>
/// <param name="Item">Which.</param>
/// <param name="Place">Where.</param>
/// <param name="Value">Value and standard uncertainty.</param>
/// <param name="IsRead">Whether it was read or measured; else it was worked out or is to be expected.</param>
/// <param name="Day">The last day on which what it rests on was taken; null where nobody has said.</param>
/// <param name="Gauge">The one gauge it was read with; null for a measure, or where there were several.</param>
/// <param name="ZeroU">What of its uncertainty is the gauge's zero: it drops out of a difference of two readings with one gauge.</param>
public sealed record RigValue(
    RigItem Item, RigPlace Place, RigEstimate Value, bool IsRead = true, DateOnly? Day = null, string? Gauge = null, double ZeroU = 0);

/// <summary>A rigger or an oar by its mark, and the gate it belongs to.</summary>
/// <param name="At">The gate.</param>
/// <param name="Mark">What is written on it.</param>
public sealed record RigMark(GatePlace At, string Mark);
