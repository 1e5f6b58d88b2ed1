namespace Gatewright.Core.Diagnosing;

/// <summary>One thing that is wrong in a story.</summary>
/// <param name="Cause">What.</param>
/// <param name="Gate">At which gate; null for what the boat shares.</param>
/// <param name="Other">The second gate of two exchanged riggers.</param>
/// <param name="Gauge">Which gauge, where the gauge is the cause.</param>
public sealed record CausePart(Cause Cause, GatePlace? Gate = null, GatePlace? Other = null, string? Gauge = null)
{
    /// <summary>Whether this part says something of a gate.</summary>
    public bool Touches(GatePlace gate) => Gate == gate || Other == gate;

    /// <summary>"pin-out at seat 3 port".</summary>
    public override string ToString() => (Gate, Other, Gauge) switch
    {
        ({ } gate, { } other, _) => $"{Cause.Code()} between {gate} and {other}",
        ({ } gate, _, _) => $"{Cause.Code()} at {gate}",
        (_, _, { } gauge) => $"{Cause.Code()} of {gauge}",
        _ => Cause.Code(),
    };
}
