using Gatewright.Core.Geometry;

namespace Gatewright.Core.Judging;

/// <summary>What a standard asks of the pitch at one station.</summary>
/// <param name="Lowest">The lowest pitch of good quality; on it is inside.</param>
/// <param name="Highest">The highest pitch of good quality; on it is inside.</param>
/// <param name="Floor">The pitch below which the blade may dive, at most <paramref name="Lowest"/>.</param>
public sealed record StationLimits(Pitch Lowest, Pitch Highest, Pitch Floor)
{
    /// <summary>
    /// Whether they rise from the floor to the lowest to the highest pitch, as they must to judge by. Kept as a question,
    /// so that whoever reads a standard from a file can hold one that is wrong while saying all that is wrong with it.
    /// </summary>
    public bool AreInOrder => Floor.Angle <= Lowest.Angle && Lowest.Angle <= Highest.Angle;

    /// <summary>Limits in degrees.</summary>
    public static StationLimits FromDegrees(double lowest, double highest, double floor) =>
        new(Pitch.FromDegrees(lowest), Pitch.FromDegrees(highest), Pitch.FromDegrees(floor));
}
