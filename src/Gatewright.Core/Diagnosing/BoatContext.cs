using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// What is known of a boat beside its readings: what its gates are meant to be, what was told of it,
/// and how it stood when it was last found good.
/// </summary>
public sealed record BoatContext
{
    /// <summary>Nothing is known.</summary>
    public static BoatContext None { get; } = new();

    /// <summary>What a gate is meant to be, where that differs from the common target: an insert's stamp, a set lean.</summary>
    public IReadOnlyDictionary<GatePlace, GateState> Targets { get; init; } = new Dictionary<GatePlace, GateState>();

    /// <summary>What was told of the boat since its last mending.</summary>
    public IReadOnlyList<Report> Reports { get; init; } = [];

    /// <summary>How a gate's pin leaned when it was last found good, before anything was done to it.</summary>
    public IReadOnlyDictionary<GatePlace, PinLean> LastGood { get; init; } = new Dictionary<GatePlace, PinLean>();

    /// <summary>How many readings of gates as they are were left aside, as of days too far back.</summary>
    public int LeftAside { get; init; }

    /// <summary>The gates that read otherwise than on the days before, of which no reading up to then counts.</summary>
    public IReadOnlyList<SeenChange> Changes { get; init; } = [];

    /// <summary>What a gate is meant to be, if that is known.</summary>
    public GateState? Target(GatePlace gate) => Targets.TryGetValue(gate, out GateState target) ? target : null;
}
