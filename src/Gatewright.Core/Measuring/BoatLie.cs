namespace Gatewright.Core.Measuring;

/// <summary>One lying of a boat: the readings taken in it share whatever its level was.</summary>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Level">How its level is known.</param>
/// <param name="Date">The day, if known.</param>
/// <param name="Moved">What tells it from one before the boat was moved, where it lay alike that day; null where nobody said that it was moved.</param>
public sealed record BoatLie(Lie Lie, HullLevel Level, DateOnly? Date = null, string? Moved = null);
