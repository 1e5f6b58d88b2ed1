using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending.Options;

/// <summary>What a gate's pitch is at a station, left as it is, or is to be when it has been mended.</summary>
/// <param name="At">Where in the stroke.</param>
/// <param name="Pitch">The pitch on a level boat, with its standard uncertainty.</param>
/// <param name="Below">The probability that it lies below the standard's floor there.</param>
/// <param name="IsJudged">
/// Whether limits, drop and range ask about it: where the gate was read, since quality is judged where it was seen.
/// The floor asks everywhere.
/// </param>
public sealed record PredictedPitch(StrokePoint At, Estimate Pitch, double Below, bool IsJudged);
