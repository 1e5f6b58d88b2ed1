using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Judging;

/// <summary>How sure one must be for a verdict (JCGM 106:2012, 8: decision rules).</summary>
/// <remarks>
/// Limits of quality are accepted simply, with the risk shared between the boat and whoever rows it (JCGM 106:2012,
/// 8.2): a reading on or inside is good whatever its uncertainty. Floors of safety are guarded (8.3.2): the reading
/// must show that the pitch lies above.
/// </remarks>
/// <param name="OutsideToAdjust">From this probability of being outside a limit on it is `adjust`, below it `unsure`.</param>
/// <param name="AboveFloorForGood">From this probability of lying above the floor on it is `good`.</param>
/// <param name="BelowFloorToStop">From this probability of lying below the floor on it is `stop`.</param>
public sealed record DecisionRule(double OutsideToAdjust, double AboveFloorForGood, double BelowFloorToStop)
{
    /// <summary>A value typed as the limit itself counts as on it, though correcting it may have cost the last digit.</summary>
    private const double OnTheLimit = 1e-9;

    /// <summary>0.8, 0.95 and 0.5.</summary>
    public static DecisionRule Default { get; } = new(0.8, 0.95, 0.5);

    /// <summary>Judges a value against a lower and an upper limit of quality.</summary>
    /// <returns>The verdict, and the probability that the true value lies outside the two.</returns>
    public (Verdict Verdict, double Outside) Limits(double value, double u, double lowest, double highest)
    {
        double outside = Normal.Cdf(Scale(lowest - value, u)) + Normal.Above(Scale(highest - value, u));
        if (value >= lowest - OnTheLimit && value <= highest + OnTheLimit)
        {
            return (Verdict.Good, outside);
        }

        return (outside >= OutsideToAdjust ? Verdict.Adjust : Verdict.Unsure, outside);
    }

    /// <summary>Judges a probability of lying below a floor of safety.</summary>
    public Verdict Floor(double below) =>
        below >= BelowFloorToStop ? Verdict.Stop
        : 1 - below >= AboveFloorForGood ? Verdict.Good
        : Verdict.Unsure;

    /// <summary>The probability that a value known with a standard uncertainty lies below a floor.</summary>
    public static double Below(Pitch floor, double value, double u) => Normal.Cdf(Scale(floor.Degrees - value, u));

    /// <summary>A value known exactly lies where it lies; one exactly on the limit is on either side alike.</summary>
    private static double Scale(double off, double u) =>
        u > 0 ? off / u
        : Math.Abs(off) <= OnTheLimit ? 0
        : off > 0 ? double.PositiveInfinity
        : double.NegativeInfinity;
}
