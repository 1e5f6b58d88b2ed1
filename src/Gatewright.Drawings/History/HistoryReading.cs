using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Drawings.History;

/// <summary>A reading of one gate at one place in the stroke, on its day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Pitch">The pitch, with its standard uncertainty.</param>
/// <param name="Verdict">Its verdict then, where one is known.</param>
public readonly record struct HistoryReading(DateOnly Day, Estimate Pitch, Verdict? Verdict = null);
