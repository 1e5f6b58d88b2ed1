using Gatewright.Core.Judging;

namespace Gatewright.Core.Rig;

/// <summary>
/// Seat against seat: where the largest and the smallest figure of a measure are too far apart, and which seat that is
/// laid to: the furthest from the middle of the boat, as with gates; of several as far those that miss their own target.
/// </summary>
internal static class RigSeats
{
    // As far, but for the last digit of a mean.
    private const double AsFar = 1e-9;

    /// <summary>Adds the reasons.</summary>
    public static void Add(RigFigures figures, RigTargets targets, DecisionRule rule, List<RigReason>[] to)
    {
        foreach (RigMeasure measure in RigMeasures.All)
        {
            if (targets.Class.Rowing == Rowing.Scull && measure.HasSide())
            {
                Add(measure, Side.Port, figures, targets, rule, to);
                Add(measure, Side.Starboard, figures, targets, rule, to);
            }
            else
            {
                Add(measure, null, figures, targets, rule, to);
            }
        }
    }

    /// <param name="measure">The measure.</param>
    /// <param name="side">The side that is looked at by itself; null for all figures together, as in sweep.</param>
    /// <param name="figures">The figures.</param>
    /// <param name="targets">The targets.</param>
    /// <param name="rule">How sure one must be.</param>
    /// <param name="to">The reasons so far.</param>
    private static void Add(
        RigMeasure measure, Side? side, RigFigures figures, RigTargets targets, DecisionRule rule, List<RigReason>[] to)
    {
        if (targets.Find(measure, RigAspect.Seats, new(0, side)) is not { } target)
        {
            return;
        }

        var these = new List<int>();
        for (int i = 0; i < figures.All.Count; i++)
        {
            // What was worked out differs where the measures that it follows from do, and those are judged.
            if (figures.All[i].Measure == measure && !figures.All[i].IsComputed && (side is null || figures.All[i].Place.Side == side))
            {
                these.Add(i);
            }
        }

        these.Sort((x, y) => Of(x) != Of(y) ? Of(x).CompareTo(Of(y)) : x.CompareTo(y));
        if (these.Count < 2 || Of(these[^1]) - Of(these[0]) <= target.Highest + AsFar)
        {
            return;
        }

        double middle = (Of(these[these.Count / 2]) + Of(these[(these.Count - 1) / 2])) / 2;
        double furthest = Math.Max(Of(these[^1]) - middle, middle - Of(these[0]));
        List<int> asFar = these.FindAll(i => Math.Abs(Of(i) - middle) >= furthest - AsFar);
        List<int> outside = asFar.FindAll(i => RigJudge.IsOutside(figures.All[i], targets));
        foreach (int i in outside.Count > 0 ? outside : asFar)
        {
            int other = Of(i) > middle ? these[0] : these[^1];
            RigEstimate range = Of(i) > middle ? figures.Difference(i, other) : figures.Difference(other, i);
            if (RigJudge.Reason(figures.All[i], RigReasonKind.Seats, range, target, rule, figures.All[other].Place) is { } reason)
            {
                to[i].Add(reason);
            }
        }

        double Of(int index) => figures.All[index].Value.Value;
    }
}
