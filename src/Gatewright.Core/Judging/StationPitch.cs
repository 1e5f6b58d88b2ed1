using Gatewright.Core.Measuring;

namespace Gatewright.Core.Judging;

/// <summary>A gate's pitch at one point of the stroke, as judged.</summary>
/// <param name="At">Where in the stroke.</param>
/// <param name="Read">Whether it was read there; if not, it is what the other readings let one expect.</param>
/// <param name="Pitch">The pitch on a level boat, with its standard uncertainty.</param>
/// <param name="Repeats">How many readings it rests on; 0 when it was not read there.</param>
/// <param name="RepeatsDisagree">Whether two of those readings differ by more than their uncertainty allows.</param>
public sealed record StationPitch(StrokePoint At, bool Read, Estimate Pitch, int Repeats, bool RepeatsDisagree);
