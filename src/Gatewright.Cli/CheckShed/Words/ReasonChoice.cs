using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>
/// Which of a gate's reasons are told unless all are asked for: those that made its verdict and every floor, without
/// what follows from another that is told.
/// </summary>
internal static class ReasonChoice
{
    public static IReadOnlyList<Reason> Of(GateVerdict gate, bool all) =>
        all ? gate.Reasons : [.. gate.Reasons.Where(reason => IsTold(reason, gate))];

    /// <summary>How many are not told, in words; null when none.</summary>
    public static string? LeftOut(GateVerdict gate, bool all) =>
        gate.Reasons.Count - Of(gate, all).Count is > 0 and int count
            ? $"{Figures.Count(count, "further reason")} of less weight; --all tells all."
            : null;

    private static bool IsTold(Reason reason, GateVerdict gate) =>
        reason.Kind == ReasonKind.Floor || (reason.Verdict == gate.Verdict && !Follows(reason, gate));

    /// <summary>
    /// A gate that may be under the floor is below the limit too; one that is out of limits at a station is far from
    /// the others there.
    /// </summary>
    private static bool Follows(Reason reason, GateVerdict gate) => reason.Kind switch
    {
        ReasonKind.BelowLimit => Has(gate, reason.Station, kind => kind == ReasonKind.Floor),
        ReasonKind.Range => Has(gate, reason.Station, kind => kind != ReasonKind.Range),
        _ => false,
    };

    private static bool Has(GateVerdict gate, Station station, Func<ReasonKind, bool> isIt) =>
        gate.Reasons.Any(reason => reason.Station == station && isIt(reason.Kind));
}
