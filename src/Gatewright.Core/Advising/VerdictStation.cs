using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Advising;

/// <summary>
/// A station at which a gate was not read: its pitch may prove to lie below the floor, outside the limits, or inside.
/// </summary>
/// <param name="Station">The station.</param>
/// <param name="Weights">Its pitch as a sum of the gate's three unknowns.</param>
/// <param name="Limits">What the standard asks there.</param>
internal sealed record VerdictStation(Station Station, double[] Weights, StationLimits Limits)
{
    public const int ClassCount = 3;

    public static VerdictStation Of(Station station, OarAngle at, Side side, StationLimits limits)
    {
        PitchSlopes slopes = PitchSlopes.At(at, side, Lie.Upright);
        return new(station, [1, slopes.Aft, slopes.Out], limits);
    }

    /// <summary>The probabilities of the three, over all accounts of the gate.</summary>
    public double[] Classes(IReadOnlyList<Account> accounts)
    {
        double[] classes = new double[ClassCount];
        foreach (Account account in accounts)
        {
            double[] own = Classes(account);
            for (int i = 0; i < ClassCount; i++)
            {
                classes[i] += account.Weight * own[i];
            }
        }

        return classes;
    }

    /// <summary>The probabilities of the three under one account.</summary>
    public double[] Classes(Account account)
    {
        double[] classes = new double[ClassCount];
        Add(1, account.Mean(Weights), Math.Sqrt(account.Covariance(Weights, Weights)), classes);
        return classes;
    }

    /// <summary>Adds the three probabilities of a normal pitch, times a weight.</summary>
    public void Add(double weight, double mean, double deviation, Span<double> classes)
    {
        double below = NormalTable.Cdf((Limits.Floor.Degrees - mean) / deviation);
        double low = NormalTable.Cdf((Limits.Lowest.Degrees - mean) / deviation);
        double high = NormalTable.Cdf((mean - Limits.Highest.Degrees) / deviation);
        classes[0] += weight * below;
        classes[1] += weight * (low - below + high);
        classes[2] += weight * (1 - low - high);
    }
}
