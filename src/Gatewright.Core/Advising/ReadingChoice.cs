using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>One reading that could be taken next.</summary>
/// <param name="Item">Its kind.</param>
/// <param name="Gate">The gate, or the gate of the oar; null for level and gauge.</param>
/// <param name="At">Where in the stroke, for a gate's face.</param>
/// <param name="Gauge">The gauge, where that is what is checked.</param>
public sealed record ReadingChoice(NextItem Item, GatePlace? Gate = null, StrokePoint? At = null, string? Gauge = null);
