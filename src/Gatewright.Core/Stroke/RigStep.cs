using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>One measure of a seat's rig set to another value.</summary>
/// <param name="Measure">One of <see cref="SeatRig.Measures"/>.</param>
/// <param name="By">By how much: plus for more.</param>
public readonly record struct RigStep(RigMeasure Measure, Length By);
