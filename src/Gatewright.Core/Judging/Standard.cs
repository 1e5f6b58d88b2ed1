using Gatewright.Core.Geometry;

namespace Gatewright.Core.Judging;

/// <summary>The limits a boat is judged by.</summary>
/// <param name="Name">What the club calls it.</param>
/// <param name="Catch">Limits at the catch.</param>
/// <param name="Abeam">Limits abeam.</param>
/// <param name="Finish">Limits at the finish.</param>
/// <param name="LargestDrop">The most a gate may lose from catch to finish.</param>
/// <param name="LargestRange">The most that two gates of one boat may differ at one station.</param>
public sealed record Standard(
    string Name, StationLimits Catch, StationLimits Abeam, StationLimits Finish, Angle LargestDrop, Angle LargestRange)
{
    /// <summary>
    /// For a club. Catch 3 to 5, the range of 1.5 across a boat, and the floors are common practice in the trade;
    /// the rest is this project's.
    /// </summary>
    public static Standard Club { get; } = new(
        "club",
        StationLimits.FromDegrees(3, 5, 2),
        StationLimits.FromDegrees(3, 5, 2),
        StationLimits.FromDegrees(1.5, 5, 0),
        Angle.FromDegrees(2.5),
        Angle.FromDegrees(1.5));

    /// <summary>For a boat that races: tighter limits, the same floors.</summary>
    public static Standard Race { get; } = new(
        "race",
        StationLimits.FromDegrees(3.5, 4.5, 2),
        StationLimits.FromDegrees(3.5, 4.5, 2),
        StationLimits.FromDegrees(2.5, 4.5, 0),
        Angle.FromDegrees(1.5),
        Angle.FromDegrees(0.5));

    /// <summary>The standards that every club starts with.</summary>
    public static IReadOnlyList<Standard> BuiltIn { get; } = [Club, Race];

    /// <summary>The limits at a station.</summary>
    public StationLimits At(Station station) => station switch
    {
        Station.Catch => Catch,
        Station.Abeam => Abeam,
        _ => Finish,
    };
}
