using Gatewright.Core.Geometry;

namespace Gatewright.Core.Load;

/// <summary>How hard the handle is pulled through the drive: a half sine from nothing at the catch over a peak to nothing at the finish.</summary>
/// <remarks>
/// The shape is ours, for its smoothness and lack of anything to fit. The peaks are those of Hartmann et al. (International
/// Journal of Sports Medicine, 1993, abstract): 1350 N men and 1020 N women in the best of 5 to 10 maximal strokes on an
/// ergometer, and over six minutes not above 65 to 70 % of that, of which the middle is taken.
/// </remarks>
/// <param name="Name">Its word.</param>
/// <param name="PeakNewtons">The peak of a rower's pull, both hands together, in newtons.</param>
/// <exception cref="ArgumentOutOfRangeException">The peak is not above 0, or not finite.</exception>
public sealed record DriveProfile(string Name, double PeakNewtons)
{
    private const double OverSixMinutes = 0.675;

    /// <summary>The peak of a rower's pull, both hands together, in newtons; above 0.</summary>
    public double PeakNewtons { get; } = PeakNewtons is > 0 and < double.PositiveInfinity
        ? PeakNewtons
        : throw new ArgumentOutOfRangeException(nameof(PeakNewtons), PeakNewtons, "A pull is above 0 and finite.");

    /// <summary>Men over six minutes: 911 N.</summary>
    public static DriveProfile Men { get; } = new("men", 1350 * OverSixMinutes);

    /// <summary>Women over six minutes: 689 N.</summary>
    public static DriveProfile Women { get; } = new("women", 1020 * OverSixMinutes);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DriveProfile> All { get; } =
        [Men, Women, new("men-maximal", 1350), new("women-maximal", 1020)];

    /// <summary>The profile of that word, or null.</summary>
    public static DriveProfile? OfWord(string word)
    {
        foreach (DriveProfile profile in All)
        {
            if (string.Equals(profile.Name, word, StringComparison.OrdinalIgnoreCase))
            {
                return profile;
            }
        }

        return null;
    }

    /// <summary>The pull on one rower's handle or handles, in newtons; 0 outside the drive.</summary>
    public double PullNewtons(OarAngle at, OarAngle atCatch, OarAngle atFinish)
    {
        double share = (atCatch.Degrees - at.Degrees) / (atCatch.Degrees - atFinish.Degrees);
        return share is > 0 and < 1 ? PeakNewtons * Math.Sin(Math.PI * share) : 0;
    }
}
