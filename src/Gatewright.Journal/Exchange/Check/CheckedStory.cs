using Gatewright.Core;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>A joint account of everything that may be wrong with a boat's readings.</summary>
/// <param name="Cause">Its name in short: its parts' codes joined by <c> + </c>, or <c>none</c>.</param>
/// <param name="Probability">0 to 1.</param>
/// <param name="Parts">What is wrong; empty when nothing is.</param>
public sealed record CheckedStory(string Cause, double Probability, IReadOnlyList<CheckedPart> Parts)
{
    /// <summary>The account as it was before it was written.</summary>
    public Story ToStory() => new([.. Parts.Select(part => part.ToPart())], Probability);
}

/// <summary>One thing that is wrong in an account.</summary>
/// <param name="Cause">Its code.</param>
/// <param name="Seat">The gate's seat; null for what the whole boat shares.</param>
/// <param name="Side">The gate's side; null for what the whole boat shares.</param>
/// <param name="Other">The second gate of two exchanged riggers; otherwise null.</param>
/// <param name="Gauge">Which gauge, where the gauge is the cause; otherwise null.</param>
public sealed record CheckedPart(string Cause, int? Seat, string? Side, CheckedGate? Other, string? Gauge)
{
    /// <summary>The part as it was before it was written.</summary>
    public CausePart ToPart() => new(
        Causes.All.Single(cause => cause.Code() == Cause), Place(Seat, Side), Place(Other?.Seat, Other?.Side), Gauge);

    private static GatePlace? Place(int? seat, string? side) => (seat, side) is ({ } at, { } of)
        ? new GatePlace(at, Enum.GetValues<Side>().Single(s => s.Word() == of))
        : null;
}
