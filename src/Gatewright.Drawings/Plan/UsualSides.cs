using Gatewright.Core;

namespace Gatewright.Drawings.Plan;

/// <summary>Where the gates of a class usually are, for a boat that nobody has told more about.</summary>
public static class UsualSides
{
    /// <summary>
    /// Sculling: both sides at every seat. Sweep: sides in turn with stroke on port, as boats are rigged by default
    /// (common practice); any other layout is a fact of the boat.
    /// </summary>
    public static IReadOnlyList<GatePlace> Of(BoatClass boatClass) => boatClass.Rowing == Rowing.Scull
        ? [.. Enumerable.Range(1, boatClass.Seats).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })]
        : [.. Enumerable.Range(1, boatClass.Seats).Select(seat => new GatePlace(seat, seat % 2 == 0 ? Side.Port : Side.Starboard))];
}
