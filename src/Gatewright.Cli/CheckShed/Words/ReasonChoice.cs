using Gatewright.Cli.Drawing;
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
        reason.Kind == ReasonKind.Floor
        || (reason.Verdict == gate.Verdict && !(reason.Kind == ReasonKind.Range && IsOutOfLimits(gate, reason)));

    /// <summary>A gate out of limits at a station is far from the others there; the second is no news.</summary>
    private static bool IsOutOfLimits(GateVerdict gate, Reason range) =>
        gate.Reasons.Any(r => r.Station == range.Station
            && r.Kind is ReasonKind.AboveLimit or ReasonKind.BelowLimit or ReasonKind.Drop);
}
