using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;

namespace Gatewright.Planning;

/// <summary>Which boats are for the bench, and which have to be read again first.</summary>
/// <remarks>
/// Mending what a level or a gauge got wrong puts wrong what was right, and mending scatter makes it worse. So a boat is
/// read again when its level, the gauge or exchanged riggers are more likely than not to be the cause, or when all that is
/// not good about it is `unsure` with probably nothing wrong. In a boat that is mended, a single gate of that kind is read
/// again and stays out of the plan.
/// </remarks>
internal static class Triage
{
    /// <summary>More likely than not.</summary>
    private const double Probable = 0.5;

    /// <summary>Why a boat that is not good is to be read again first; null when it can be mended.</summary>
    public static ReadAgainReason? ReadAgain(BoatCheck check)
    {
        Diagnosis diagnosis = check.Diagnosis;
        if (SharedFault.IsProbable(check))
        {
            bool liesElsewhere = diagnosis.Levels.Any(level => SharedFault.LiesElsewhere(level, check));
            double level = diagnosis.Probability(p => p.Cause == Cause.HullLevel);
            double gauge = diagnosis.Probability(p => p.Cause == Cause.GaugeZero);
            return liesElsewhere || level >= gauge ? ReadAgainReason.Level : ReadAgainReason.Gauge;
        }

        if (diagnosis.Probability(p => p.Cause == Cause.WrongSeat) >= Probable)
        {
            return ReadAgainReason.Riggers;
        }

        return check.Verdict.Gates.All(g => g.Verdict == Verdict.Good || IsOnlyDoubt(check, g, g.Verdict))
            ? ReadAgainReason.Doubt
            : null;
    }

    /// <summary>Whether a gate of a boat that is mended is to be read again instead.</summary>
    public static bool ReadsAgain(BoatCheck check, GateVerdict gate) => IsOnlyDoubt(check, gate, Own(gate));

    /// <summary>The verdict of a gate by itself: without the range, which is the boat's.</summary>
    public static Verdict Own(GateVerdict gate) => gate.Reasons
        .Where(r => r.Kind != ReasonKind.Range)
        .Aggregate(Verdict.Good, (worst, reason) => Verdicts.Worse(worst, reason.Verdict));

    /// <summary>Whether probably nothing is wrong with a gate.</summary>
    public static bool IsProbablySound(BoatCheck check, GatePlace gate) =>
        check.Diagnosis.Gates.Single(g => g.Gate == gate).Wrong < Probable;

    private static bool IsOnlyDoubt(BoatCheck check, GateVerdict gate, Verdict verdict) =>
        verdict == Verdict.Unsure && IsProbablySound(check, gate.Gate);
}
