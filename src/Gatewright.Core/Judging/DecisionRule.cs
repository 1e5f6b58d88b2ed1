using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
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
    /// <summary>From this probability of being outside a limit on it is `adjust`, below it `unsure`.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not from 0 to 1.</exception>
    public double OutsideToAdjust { get; init => field = Probability(value); } = Probability(OutsideToAdjust);

    /// <summary>From this probability of lying above the floor on it is `good`.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not from 0 to 1.</exception>
    public double AboveFloorForGood { get; init => field = Probability(value); } = Probability(AboveFloorForGood);

    /// <summary>From this probability of lying below the floor on it is `stop`.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not from 0 to 1.</exception>
    public double BelowFloorToStop { get; init => field = Probability(value); } = Probability(BelowFloorToStop);

    /// <summary>A value typed as the limit itself counts as on it, though correcting it may have cost the last digit.</summary>
    private const double OnTheLimit = 1e-9;

    /// <summary>0.8, 0.95 and 0.5.</summary>
    public static DecisionRule Default { get; } = new(0.8, 0.95, 0.5);

    /// <summary>Judges a value against a lower and an upper limit of quality.</summary>
    /// <returns>The verdict, and the probability that the true value lies outside the two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is below 0 or NaN.</exception>
    public (Verdict Verdict, double Outside) Limits(double value, double u, double lowest, double highest)
    {
        double outside = Normal.Cdf(Scale(lowest - value, u)) + Normal.Above(Scale(highest - value, u));
        if (value >= lowest - OnTheLimit && value <= highest + OnTheLimit)
        {
            return (Verdict.Good, outside);
        }

        return (outside >= OutsideToAdjust ? Verdict.Adjust : Verdict.Unsure, outside);
    }

    /// <summary>Judges a quantity that has an upper limit of quality alone.</summary>
    /// <returns>The verdict, and the probability that the true value lies above.</returns>
    public (Verdict Verdict, double Outside) AtMost(Estimate value, Angle largest) =>
        Limits(value.Value.Degrees, value.U.Degrees, double.NegativeInfinity, largest.Degrees);

    /// <summary>Judges a probability of lying below a floor of safety.</summary>
    public Verdict Floor(double below) =>
        below >= BelowFloorToStop ? Verdict.Stop
        : 1 - below >= AboveFloorForGood ? Verdict.Good
        : Verdict.Unsure;

    /// <summary>The probability that a value known with a standard uncertainty lies below a floor; on the floor, a half.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is below 0 or NaN.</exception>
    public static double Below(Pitch floor, double value, double u) => Normal.Cdf(Scale(floor.Degrees - value, u));

    private static double Probability(double value) => value is >= 0 and <= 1
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A probability must be from 0 to 1.");

    /// <summary>
    /// A value on the limit is on either side alike, however well it is known; any other that is known exactly lies
    /// where it lies.
    /// </summary>
    private static double Scale(double off, double u)
    {
        if (!(u >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(u), u, "A standard uncertainty must be 0 or more.");
        }

        return Math.Abs(off) <= OnTheLimit ? 0 : off / u;
    }
}
