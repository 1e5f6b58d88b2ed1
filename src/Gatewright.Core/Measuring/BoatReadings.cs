namespace Gatewright.Core.Measuring;

/// <summary>Everything that was read on one boat and is to be judged together.</summary>
/// <param name="Boat">The boat's name.</param>
/// <param name="Class">Its class.</param>
/// <param name="Readings">The readings, in any order: the order decides nothing.</param>
public sealed record BoatReadings(string Boat, BoatClass Class, IReadOnlyList<Reading> Readings);
