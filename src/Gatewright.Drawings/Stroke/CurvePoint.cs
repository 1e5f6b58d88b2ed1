using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Drawings.Stroke;

/// <summary>The pitch at a place in the stroke.</summary>
/// <param name="At">Where in the stroke.</param>
/// <param name="Pitch">The pitch, with its standard uncertainty.</param>
/// <param name="Verdict">Its verdict, where it was read and judged.</param>
public readonly record struct CurvePoint(OarAngle At, Estimate Pitch, Verdict? Verdict = null);
