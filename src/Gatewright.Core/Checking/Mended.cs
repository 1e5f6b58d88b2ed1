namespace Gatewright.Core.Checking;

/// <summary>A gate was mended.</summary>
/// <param name="Gate">Which.</param>
/// <param name="Date">The day; null when only the order of the record tells.</param>
public sealed record Mended(GatePlace Gate, DateOnly? Date);
