using Gatewright.Core;

namespace Gatewright.Printing.RigSheets;

/// <summary>A gate's pitch at a station, as it stands on paper.</summary>
/// <param name="Station">The station.</param>
/// <param name="Value">Degrees on a level boat.</param>
/// <param name="U">Its standard uncertainty.</param>
/// <param name="IsRead">Whether it was read there; else it is what is expected, and stands in brackets.</param>
internal sealed record SheetPitch(Station Station, string Value, string U, bool IsRead);
