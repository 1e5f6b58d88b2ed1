using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Rig;

/// <summary>
/// Judges a boat's rig by its targets: each figure by itself, starboard against port, seat against seat. The rule is that of
/// quality for pitch: on or inside is good, outside is `adjust` where that is sure enough, else `unsure`.
/// </summary>
public static class RigJudge
{
    // A figure typed as the limit itself counts as on it, though a mean or a difference may have cost the last digit.
    private const double Alike = 1e-9;

    /// <summary>Judges readings by the usual errors and the usual rule.</summary>
    public static RigVerdict Of(IReadOnlyList<RigReading> readings, RigTargets targets) =>
        Of(RigFigures.Of(readings), targets, DecisionRule.Default);

    /// <summary>Judges figures.</summary>
    public static RigVerdict Of(RigFigures figures, RigTargets targets, DecisionRule rule)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(targets);
        ArgumentNullException.ThrowIfNull(rule);
        var reasons = new List<RigReason>[figures.All.Count];
        for (int i = 0; i < reasons.Length; i++)
        {
            reasons[i] = [];
            AddOwn(figures.All[i], targets, rule, reasons[i]);
        }

        RigSides.Add(figures, targets, rule, reasons);
        RigSeats.Add(figures, targets, rule, reasons);
        return Closed(figures, targets, reasons);
    }

    /// <summary>The reason a judged quantity gives against a target, or null.</summary>
    internal static RigReason? Reason(
        RigFigure figure, RigReasonKind? kind, RigEstimate value, RigTarget target, DecisionRule rule, RigPlace? other)
    {
        (Verdict verdict, double outside) = rule.Limits(value.Value, value.U, target.Lowest, target.Highest);
        if (verdict == Verdict.Good)
        {
            return null;
        }

        bool isBelow = value.Value < target.Lowest;
        RigReasonKind which = kind ?? (isBelow ? RigReasonKind.BelowLimit : RigReasonKind.AboveLimit);
        double limit = isBelow ? target.Lowest : target.Highest;
        return new(verdict, which, figure.Measure, figure.Place, value, limit, outside, target, other);
    }

    /// <summary>Whether a figure lies outside the limits of its own target: a difference is then laid to it first.</summary>
    internal static bool IsOutside(RigFigure figure, RigTargets targets) =>
        targets.Find(figure.Measure, RigAspect.Value, figure.Place) is { } own
        && (figure.Value.Value < own.Lowest - Alike || figure.Value.Value > own.Highest + Alike);

    private static void AddOwn(RigFigure figure, RigTargets targets, DecisionRule rule, List<RigReason> to)
    {
        if (targets.Find(figure.Measure, RigAspect.Value, figure.Place) is { } target
            && Reason(figure, null, figure.Value, target, rule, null) is { } reason)
        {
            to.Add(reason);
        }

        // A setting proves nothing: it is never good before it is taken again.
        if (figure.IsSet)
        {
            RigTarget? own = targets.Find(figure.Measure, RigAspect.Value, figure.Place);
            double outside = own is null ? 0 : rule.Limits(figure.Value.Value, figure.Value.U, own.Lowest, own.Highest).Outside;
            to.Add(new(Verdict.Unsure, RigReasonKind.NotTakenSince, figure.Measure, figure.Place, figure.Value, figure.Value.Value, outside, own));
        }

        // Of two readings that do not agree one is a slip or old, and nobody can tell which.
        if (figure.Apart is { } apart)
        {
            double limit = RepeatedReading.ApartLimit(apart.U, figure.Repeats);
            double probability = RepeatedReading.ProbabilityCloser(apart.Value, apart.U, figure.Repeats);
            to.Add(new(Verdict.Unsure, RigReasonKind.Repeats, figure.Measure, figure.Place, apart, limit, probability, null));
        }
    }

    private static RigVerdict Closed(RigFigures figures, RigTargets targets, List<RigReason>[] reasons)
    {
        var judged = new JudgedFigure[reasons.Length];
        Verdict worst = Verdict.Unsure;
        bool isJudged = false;
        for (int i = 0; i < judged.Length; i++)
        {
            RigFigure figure = figures.All[i];

            // Worst first; of equals in the order in which they were found.
            List<RigReason> sorted = [.. reasons[i].OrderByDescending(r => r.Verdict)];
            RigTarget? target = targets.Find(figure.Measure, RigAspect.Value, figure.Place);
            judged[i] = new(figure, target, sorted.Count == 0 ? Verdict.Good : sorted[0].Verdict, sorted);
            if (target is not null || sorted.Count > 0)
            {
                worst = isJudged ? Verdicts.Worse(worst, judged[i].Verdict) : judged[i].Verdict;
                isJudged = true;
            }
        }

        return new(targets, worst, judged);
    }
}
