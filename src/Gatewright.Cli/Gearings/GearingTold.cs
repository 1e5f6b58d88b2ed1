using Gatewright.Core.Stroke;

namespace Gatewright.Cli.Gearings;

/// <summary>All that is told of a seat.</summary>
/// <param name="Boat">The boat's name; null where figures were given.</param>
/// <param name="SeatNumber">The seat.</param>
/// <param name="Stroke">Its figures.</param>
/// <param name="Change">What the change asked for does; null where none was asked for.</param>
/// <param name="Wishes">What was wanted; empty where nothing was.</param>
/// <param name="Found">How to get it.</param>
internal sealed record GearingTold(
    string? Boat,
    int SeatNumber,
    MeasuredStroke Stroke,
    StrokeChange? Change,
    IReadOnlyList<StrokeWish> Wishes,
    WishFound? Found);
