using Gatewright.Core.Judging;

namespace Gatewright.Words.Judged;

/// <summary>
/// Which of a gate's reasons are told unless all are asked for: those that made its verdict and every floor, without
/// what follows from another that is told.
/// </summary>
public static class ReasonChoice
{
    /// <summary>The reasons that are told of a gate, the heaviest first; none of one that is good.</summary>
    /// <param name="gate">The gate.</param>
    /// <param name="all">Whether all are asked for.</param>
    public static IReadOnlyList<Reason> Of(GateVerdict gate, bool all)
    {
        ArgumentNullException.ThrowIfNull(gate);
        List<Reason> told = [.. gate.Reasons.Where(reason => all || IsTold(reason, gate))];
        return told.Count > 0 ? told : [.. gate.Reasons.Take(1)];
    }

    /// <summary>How many are not told.</summary>
    public static int LeftOut(GateVerdict gate, bool all)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return gate.Reasons.Count - Of(gate, all).Count;
    }

    private static bool IsTold(Reason reason, GateVerdict gate) => reason.Kind switch
    {
        // Neither a doubt about a floor nor a slip of the gauge goes away with what else is wrong.
        ReasonKind.Floor or ReasonKind.Repeats or ReasonKind.Changed => true,
        _ => reason.Verdict == gate.Verdict && !Follows(reason, gate),
    };

    /// <summary>
    /// A gate that may be under the floor is below the limit too; one that is out of limits at a station is far from
    /// the others there.
    /// </summary>
    private static bool Follows(Reason reason, GateVerdict gate) => reason.Kind switch
    {
        ReasonKind.BelowLimit => Has(gate, reason, kind => kind == ReasonKind.Floor),
        ReasonKind.Range => Has(gate, reason, kind => kind is not (ReasonKind.Range or ReasonKind.Repeats or ReasonKind.Changed)),
        _ => false,
    };

    /// <summary>Whether the same station has a reason of a kind that weighs as much.</summary>
    private static bool Has(GateVerdict gate, Reason beside, Func<ReasonKind, bool> isIt) =>
        gate.Reasons.Any(reason =>
            reason.Station == beside.Station && reason.Verdict >= beside.Verdict && isIt(reason.Kind));
}
