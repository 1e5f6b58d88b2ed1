namespace Gatewright.Core.Measuring;

/// <summary>
/// A gate that reads otherwise than it did on an earlier day, by more than readings of one gate may differ: something was done to
/// it that is on no record, or one of the two days holds a slip.
/// </summary>
/// <param name="Gate">The gate.</param>
/// <param name="At">Where in the stroke it differs most for what may be.</param>
/// <param name="Apart">What it reads now less what it read then, with the uncertainty of the difference.</param>
/// <param name="Before">The last day whose readings of the gate no longer count.</param>
/// <param name="Then">What it read there then.</param>
/// <param name="IsConfirmed">Whether what it reads there now was read more than once, and agrees.</param>
public sealed record SeenChange(
    GatePlace Gate, StrokePoint At, Estimate Apart, DateOnly Before, Estimate Then, bool IsConfirmed);

/// <summary>The readings that speak of a boat as it is now.</summary>
/// <param name="Readings">The readings.</param>
/// <param name="Changes">The gates of which earlier ones do not, gate by gate from the bow.</param>
public sealed record ReadingsNow(BoatReadings Readings, IReadOnlyList<SeenChange> Changes);
