using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>Whether there is anything left to find out about a boat.</summary>
internal sealed class Decision(BoatCheck check, IReadOnlyList<GateView> views, JudgedDoubts judged, AdvisingSettings settings)
{
    /// <summary>Every gate's cause, or that it has none, and likewise of what the boat shares.</summary>
    public bool CausesFound => check.Diagnosis.Gates.All(IsFound) && IsSharedFound;

    /// <summary>
    /// No verdict stands open, and none hides: it is unlikely that a gate judged good has a fault that puts it outside its
    /// limits where it was not read, and certain enough whether a gate out of limits is below its floor there. That
    /// a healthy gate may be a little outside where it was not read settles nothing, since quality is judged where it
    /// was seen.
    /// </summary>
    public bool VerdictsSettled
    {
        get
        {
            double allGood = 1;
            for (int i = 0; i < views.Count; i++)
            {
                Verdict verdict = check.Verdict.Gates[i].Verdict;
                double below = views[i].BelowFloor;
                if (verdict == Verdict.Unsure
                    || (verdict == Verdict.Adjust && Math.Max(below, 1 - below) < settings.VerdictSettled))
                {
                    return false;
                }

                allGood *= verdict == Verdict.Good ? 1 - views[i].Faulty : 1;
            }

            return judged.Settled && allGood >= settings.VerdictSettled;
        }
    }

    /// <summary>
    /// The gates that were judged other than good. Too wide a range wants no cause: healthy gates may be further apart
    /// than a standard allows.
    /// </summary>
    public HashSet<GatePlace> WantingACause => [.. check.Verdict.Gates
        .Where(g => g.Reasons.Any(r => r.Kind != ReasonKind.Range))
        .Select(g => g.Gate)];

    /// <summary>
    /// Where a gate was judged other than good its cause is found: level and gauge explain it too, but not before they
    /// have been read. Where all were judged good that is settled.
    /// </summary>
    public bool IsDecided
    {
        get
        {
            HashSet<GatePlace> wanting = WantingACause;
            return wanting.Count == 0
                ? VerdictsSettled
                : IsSharedFound && (IsReadingAtFault || check.Diagnosis.Gates
                    .Where(g => wanting.Contains(g.Gate))
                    .All(g => IsFound(g) && g.Causes[0].Cause is not null));
        }
    }

    private bool IsSharedFound => Causes.All.Where(c => c.IsBoatWide()).All(cause =>
    {
        double probability = check.Diagnosis.Probability(p => p.Cause == cause);
        return Math.Max(probability, 1 - probability) >= settings.CauseFound;
    });

    /// <summary>Level or gauge is found to be wrong although it was read: then only reading it once more helps.</summary>
    private bool IsReadingAtFault => check.Diagnosis.Probability(IsFoundOut) >= settings.CauseFound;

    private bool IsFoundOut(CausePart part) => part.Cause switch
    {
        Cause.HullLevel => UsualWay.Of(check.Readings).Lie.Level is HullLevel.Read,
        Cause.GaugeZero => check.Readings.Readings.Any(r => r.Gauge.Name == part.Gauge && r.Gauge.Zero.IsChecked),
        _ => false,
    };

    /// <summary>
    /// A pin leans by itself or with its rigger: that is told by looking, not by reading, and the leans are what is
    /// mended. So the three causes count together once both leans are known.
    /// </summary>
    private bool IsFound(GateDiagnosis gate)
    {
        double leaning = gate.Causes
            .Where(c => c.Cause is Cause.PinAft or Cause.PinOut or Cause.Rigger)
            .Sum(c => c.Probability);
        return gate.Causes[0].Probability >= settings.CauseFound
            || (leaning >= settings.CauseFound
                && gate.LeanAft.U <= settings.LeanKnown
                && gate.LeanOut.U <= settings.LeanKnown);
    }
}
