using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending;

/// <summary>What the gauge should show after a mending.</summary>
/// <param name="At">Where in the stroke.</param>
/// <param name="Pitch">The pitch, with the standard uncertainty of the pitch itself.</param>
/// <param name="From">The low end of the band in which 95 of 100 readings of a mended gate fall.</param>
/// <param name="To">Its high end.</param>
public sealed record ExpectedReading(StrokePoint At, Estimate Pitch, Pitch From, Pitch To);
