using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Drawings.Plan;

/// <summary>What a plan shows of a gate.</summary>
/// <param name="Place">Which gate.</param>
/// <param name="Name">What a screen reader says of it, verdict and value with it.</param>
/// <param name="Verdict">Its verdict; null is not read.</param>
/// <param name="Value">Its figure, such as "4.0°"; null for none.</param>
/// <param name="Detail">What stands smaller under the figure, such as "± 0.4"; null for none.</param>
/// <param name="IsRead">Whether it was read on this round: its pin is drawn filled.</param>
public sealed record PlanGate(
    GatePlace Place, string Name, Verdict? Verdict = null, string? Value = null, string? Detail = null, bool IsRead = false);
