using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>What is known of a boat beside its readings: what its gates are meant to be.</summary>
public sealed record BoatContext
{
    /// <summary>Nothing is known.</summary>
    public static BoatContext None { get; } = new();

    /// <summary>What a gate is meant to be, where that differs from the common target: an insert's stamp, a set lean.</summary>
    public IReadOnlyDictionary<GatePlace, GateState> Targets { get; init; } = new Dictionary<GatePlace, GateState>();

    /// <summary>What a gate is meant to be, if that is known.</summary>
    public GateState? Target(GatePlace gate) => Targets.TryGetValue(gate, out GateState target) ? target : null;
}
