using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>A way to know a boat's level, with what it costs.</summary>
/// <param name="Basis">The way.</param>
/// <param name="Level">What it says of the hull.</param>
/// <param name="U">The standard uncertainty it leaves along and across the hull, each.</param>
public sealed record LevelWay(LevelBasis Basis, HullLevel Level, Angle U);

/// <summary>The ways to know the level of a boat, from the least trouble to the most, the eye last.</summary>
public static class LevelWays
{
    /// <summary>The ways there are for a boat on a rack, or on none.</summary>
    /// <param name="club">The club.</param>
    /// <param name="rack">The rack's key; null for none.</param>
    /// <param name="today">The day of the reading.</param>
    /// <param name="settings">What each way costs.</param>
    public static IReadOnlyList<LevelWay> Of(Club club, string? rack, DateOnly today, MeasuringSettings settings)
    {
        List<LevelWay> ways = [];
        if (rack is not null && RackLevels.Of(club, rack, today) is { } level)
        {
            ways.Add(Way(LevelBasis.Rack, new HullLevel.OfRack(level), settings));
        }

        ways.Add(Way(LevelBasis.Read, new HullLevel.Read(HullAttitude.Level), settings));
        ways.Add(Way(LevelBasis.BubbleCentred, new HullLevel.BubbleCentred(), settings));
        ways.Add(Way(LevelBasis.ByEye, new HullLevel.ByEye(), settings));
        return ways;
    }

    private static LevelWay Way(LevelBasis basis, HullLevel level, MeasuringSettings settings) =>
        new(basis, level, LevelEstimate.Of(level, settings).U);
}
