using Gatewright.Core.Stroke;

namespace Gatewright.Journal.Exchange.Gearings;

/// <summary>All that is told of a seat.</summary>
/// <param name="Boat">The boat's name; null where figures were given.</param>
/// <param name="SeatNumber">The seat.</param>
/// <param name="Stroke">Its figures.</param>
/// <param name="Change">What the change asked for does; null where none was asked for.</param>
/// <param name="Wishes">What was wanted; empty where nothing was.</param>
/// <param name="Allowed">What may be set for it.</param>
/// <param name="Found">How to get it.</param>
/// <param name="Nearest">How near one comes where there is no way to it.</param>
public sealed record GearingTold(
    string? Boat,
    int SeatNumber,
    MeasuredStroke Stroke,
    StrokeChange? Change,
    IReadOnlyList<StrokeWish> Wishes,
    IReadOnlyList<AllowedStep> Allowed,
    WishFound? Found,
    NearestRig? Nearest);
