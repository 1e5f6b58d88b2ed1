namespace Gatewright.Core.Diagnosing;

/// <summary>Something that was told of a boat: evidence, though not a reading.</summary>
/// <param name="Kind">What.</param>
/// <param name="Gate">At which gate; null for a boat that sits down to one side.</param>
/// <param name="Side">The side the boat sits down to; null otherwise.</param>
/// <param name="Date">The day it happened, if known.</param>
public sealed record Report(ReportKind Kind, GatePlace? Gate, Side? Side = null, DateOnly? Date = null);
