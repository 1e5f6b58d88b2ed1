using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Checking;

/// <summary>What all gates of a boat share, its level and the gauge, so that none of them need be at fault.</summary>
public static class SharedFault
{
    /// <summary>From here on it is more likely than not.</summary>
    private const double Probable = 0.5;

    /// <summary>
    /// Whether level or gauge, rather than a gate, is probably the trouble: nothing is mended then before the boat has
    /// been read again.
    /// </summary>
    public static bool IsProbable(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Diagnosis.Probability(part => part.Cause.IsBoatWide()) >= Probable
            || check.Diagnosis.Levels.Any(level => LiesElsewhere(level, check));
    }

    /// <summary>
    /// Whether the readings themselves put the boat well away from the level it was read with, by half a degree and two
    /// standard uncertainties at least: by eye that needs no cause beyond the eye.
    /// </summary>
    public static bool LiesElsewhere(LevelDiagnosis level, BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(level);
        ArgumentNullException.ThrowIfNull(check);
        HullAttitude given = LevelEstimate.Of(level.Lie.Level, check.Settings.Diagnosing.Measuring).Attitude;
        return IsElsewhere(level.BowHigh, given.BowHigh.Degrees) || IsElsewhere(level.PortLow, given.PortLow.Degrees);
    }

    private static bool IsElsewhere(Estimate lay, double given)
    {
        const double WorthTellingDegrees = 0.5;
        const double Deviations = 2;
        double off = Math.Abs(lay.Value.Degrees - given);
        return off >= WorthTellingDegrees && off >= Deviations * lay.U.Degrees;
    }
}
