using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Advising;

/// <summary>
/// What a reading is expected to tell, the long way: every outcome on a fine grid is added to the boat's readings, and
/// the boat is diagnosed from scratch. How likely the outcome is, is what it does to the evidence.
/// </summary>
internal sealed class BruteForce(BoatCheck check, ReadingChoice choice)
{
    /// <summary>Two fifths of the narrowest deviation that a reading of half degrees can have.</summary>
    private const double Step = 0.1;

    /// <summary>Far beyond what a gate of this trade shows.</summary>
    private const double Lowest = -12;
    private const double Highest = 20;

    private readonly GatePlace _gate = choice.Gate!.Value;

    private static MeasuringSettings Settings => MeasuringSettings.Default;

    public Told Told()
    {
        double evidence = check.Diagnosis.LogEvidence;
        double total = 0;
        double causes = 0;
        double stories = 0;
        double verdicts = 0;
        for (int i = 0; i <= (Highest - Lowest) / Step; i++)
        {
            Angle shown = Angle.FromDegrees(Lowest + (i * Step));
            BoatReadings taken = ReadingTaken.On(check.Readings, choice, shown, default, Settings);
            Diagnosis then = Diagnosis.Of(taken, check.Context, check.Settings.Diagnosing);
            double weight = Step * Math.Exp(then.LogEvidence - evidence);
            total += weight;
            causes += weight * Accounts(then);
            stories += weight * Stories(then);
            verdicts += weight * Verdicts(then);
        }

        return new(
            total,
            Accounts(check.Diagnosis) - causes,
            Stories(check.Diagnosis) - stories,
            Verdicts(check.Diagnosis) - verdicts);
    }

    /// <summary>The entropy over what is wrong at the gate and with what the boat shares, taken together.</summary>
    private double Accounts(Diagnosis diagnosis)
    {
        List<Func<CausePart, bool>> own = [.. Causes.All
            .Where(c => !c.IsBoatWide())
            .Select(cause => new Func<CausePart, bool>(p => p.Cause == cause && p.Touches(_gate)))];
        Func<CausePart, bool>[] shared = [p => p.Cause == Cause.HullLevel, p => p.Cause == Cause.GaugeZero];
        List<double> accounts = [Both(diagnosis, shared[0], shared[1])];
        foreach (Func<CausePart, bool> cause in own)
        {
            double withLevel = Both(diagnosis, cause, shared[0]);
            double withZero = Both(diagnosis, cause, shared[1]);
            accounts.AddRange([withLevel, withZero, diagnosis.Probability(cause) - withLevel - withZero]);
        }

        double anyOwn = diagnosis.Probability(p => p.Touches(_gate));
        foreach (Func<CausePart, bool> cause in shared)
        {
            double withOwn = diagnosis.Probability(cause) + anyOwn
                - diagnosis.Probability(p => cause(p) || p.Touches(_gate));
            accounts.Add(diagnosis.Probability(cause) - withOwn - accounts[0]);
        }

        accounts.Add(1 - accounts.Sum());
        return Entropy.Bits([.. accounts]);
    }

    private static double Both(Diagnosis diagnosis, Func<CausePart, bool> one, Func<CausePart, bool> other) =>
        diagnosis.Probability(one) + diagnosis.Probability(other) - diagnosis.Probability(p => one(p) || other(p));

    /// <summary>The entropy over the boat's whole stories, those of one in ten thousand left out.</summary>
    private static double Stories(Diagnosis diagnosis)
    {
        double told = diagnosis.Stories.Sum(s => s.Probability);
        return Entropy.Bits([.. diagnosis.Stories.Select(s => s.Probability / told)]);
    }

    private double Verdicts(Diagnosis diagnosis)
    {
        StationAngles angles = Settings.Angles(check.Readings.Class.Rowing);
        return Core.Stations.All
            .Where(station => check.Corrected.IndexOf(_gate, station) < 0)
            .Sum(station =>
            {
                var limits = check.Settings.Standard.At(station);
                GaussianMixture pitch = diagnosis.At(_gate, angles.At(station));
                double floor = pitch.Above(limits.Floor.Degrees);
                double inside = pitch.Above(limits.Lowest.Degrees) - pitch.Above(limits.Highest.Degrees);
                return Entropy.Bits([1 - floor, floor - inside, inside]);
            });
    }
}

/// <summary>What brute force found.</summary>
/// <param name="Total">The probabilities of all outcomes: 1 if the grid is wide and fine enough.</param>
/// <param name="CauseBits">The drop over what is wrong at the gate and with what the boat shares.</param>
/// <param name="StoryBits">The drop over the boat's whole stories.</param>
/// <param name="VerdictBits">The drop over the gate's pitch where it was not read.</param>
internal sealed record Told(double Total, double CauseBits, double StoryBits, double VerdictBits);
