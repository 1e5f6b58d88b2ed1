namespace Gatewright.Core.Measuring;

/// <summary>
/// A gate, or its pin, that reads otherwise than it did on an earlier day, by more than readings of one may differ: something was
/// done to it that is on no record, or one of the two days holds a slip.
/// </summary>
/// <param name="Item">What reads otherwise: the face, either lean of the pin, or the face against the pin.</param>
/// <param name="Gate">The gate.</param>
/// <param name="At">Where in the stroke it differs most for what may be; abeam for everything but the face.</param>
/// <param name="Apart">What it reads now less what it read then, with the uncertainty of the difference.</param>
/// <param name="Before">The last day whose readings of the gate no longer count; one and the same for all that changed of a gate.</param>
/// <param name="Faces">What the gate's face read where it was read up to then, and on which day last.</param>
/// <param name="IsConfirmed">Whether what it reads there now was read more than once, and agrees.</param>
public sealed record SeenChange(
    ReadItem Item, GatePlace Gate, StrokePoint At, Estimate Apart, DateOnly Before, IReadOnlyList<FormerFace> Faces, bool IsConfirmed);

/// <summary>What a face read that no longer counts.</summary>
/// <param name="At">Where in the stroke.</param>
/// <param name="Day">The day.</param>
/// <param name="Pitch">The pitch, with its uncertainty.</param>
public readonly record struct FormerFace(StrokePoint At, DateOnly Day, Estimate Pitch);

/// <summary>The readings that speak of a boat as it is now.</summary>
/// <param name="Readings">The readings.</param>
/// <param name="Changes">What of which gates earlier ones do not speak of, gate by gate from the bow.</param>
public sealed record ReadingsNow(BoatReadings Readings, IReadOnlyList<SeenChange> Changes);
