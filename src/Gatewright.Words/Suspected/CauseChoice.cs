using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;

namespace Gatewright.Words.Suspected;

/// <summary>Of which gates a cause is told, and which causes.</summary>
public static class CauseChoice
{
    /// <summary>Less probable causes are not told: a person acts on the first two or three.</summary>
    public const double WorthTelling = 0.05;

    /// <summary>A gate that reads well and probably is not: it is told of, though it has no reason against it.</summary>
    public const double ProbablyWrong = 0.5;

    /// <summary>The gates of which a cause is told: those that are not good, and those that probably are not.</summary>
    public static IEnumerable<GateDiagnosis> Gates(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Diagnosis.Gates.Where(gate => gate.Wrong >= ProbablyWrong
            || check.Verdict.Gates.Any(g => g.Gate == gate.Gate && g.Verdict != Verdict.Good));
    }

    /// <summary>Whether what is told of a gate is that it is probably as it should be.</summary>
    public static bool IsProbablyRight(GateDiagnosis gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return gate.Wrong < ProbablyWrong;
    }

    /// <summary>The causes worth telling of a gate, most probable first.</summary>
    public static IEnumerable<CauseProbability> Of(GateDiagnosis gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return gate.Causes.Where((cause, rank) => rank == 0 || cause.Probability >= WorthTelling);
    }
}
