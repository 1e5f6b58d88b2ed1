using System.Globalization;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Judging;

/// <summary>What a standard asks of the pitch at one station.</summary>
public sealed record StationLimits
{
    /// <summary>Limits, and the floor under them.</summary>
    /// <exception cref="ArgumentException">They do not stand in the order floor, lowest, highest.</exception>
    public StationLimits(Pitch lowest, Pitch highest, Pitch floor)
    {
        if (floor.Angle > lowest.Angle || lowest.Angle > highest.Angle)
        {
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture,
                $"Limits must rise from the floor to the lowest to the highest pitch: {floor}, {lowest}, {highest} do not."));
        }

        (Lowest, Highest, Floor) = (lowest, highest, floor);
    }

    /// <summary>The lowest pitch of good quality; on it is inside.</summary>
    public Pitch Lowest { get; }

    /// <summary>The highest pitch of good quality; on it is inside.</summary>
    public Pitch Highest { get; }

    /// <summary>The pitch below which the blade may dive, at most <see cref="Lowest"/>.</summary>
    public Pitch Floor { get; }

    /// <summary>Limits in degrees.</summary>
    /// <exception cref="ArgumentException">They do not stand in the order floor, lowest, highest.</exception>
    public static StationLimits FromDegrees(double lowest, double highest, double floor) =>
        new(Pitch.FromDegrees(lowest), Pitch.FromDegrees(highest), Pitch.FromDegrees(floor));
}
