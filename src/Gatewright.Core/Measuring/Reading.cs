using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>One reading, as it was taken; what it means is worked out where it is used.</summary>
/// <param name="Item">What the gauge was held against.</param>
/// <param name="Gate">The gate; of a sleeve, the gate its oar belongs to.</param>
/// <param name="At">Where in the stroke; abeam for everything but a gate.</param>
/// <param name="Value">What the gauge showed.</param>
/// <param name="Lie">How the boat lay. Readings in one lying share one object.</param>
/// <param name="Gauge">The gauge.</param>
public sealed record Reading(
    ReadItem Item, GatePlace Gate, StrokePoint At, Angle Value, BoatLie Lie, Gauge Gauge);
