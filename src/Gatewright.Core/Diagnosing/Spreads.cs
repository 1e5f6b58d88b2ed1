using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>How far healthy gates scatter, and how far a cause throws them: standard deviations.</summary>
/// <remarks>The defaults are this project's judgement. A cause's spread is added in quadrature to the healthy one.</remarks>
public sealed record Spreads
{
    /// <summary>The defaults.</summary>
    public static Spreads Default { get; } = new();

    /// <summary>What a healthy gate is, where nothing else is stamped on its insert: 4° on an upright pin.</summary>
    public GateState Target { get; init; } = GateState.FromDegrees(4, 0, 0);

    /// <summary>A healthy gate's pitch about its target: 0.3°.</summary>
    public Angle HealthyGatePitch { get; init; } = Angle.FromDegrees(0.3);

    /// <summary>A healthy pin's lean about its target, each way: 0.3°.</summary>
    public Angle HealthyLean { get; init; } = Angle.FromDegrees(0.3);

    /// <summary>A true oar's sleeve about 0: 0.3°.</summary>
    public Angle HealthySleeve { get; init; } = Angle.FromDegrees(0.3);

    /// <summary>A wrong or worn insert: 2.0°.</summary>
    public Angle GatePitch { get; init; } = Angle.FromDegrees(2.0);

    /// <summary>A leaning pin, and each lean of a knocked rigger: 2.5°.</summary>
    public Angle Lean { get; init; } = Angle.FromDegrees(2.5);

    /// <summary>A slipped sleeve: 2.0°.</summary>
    public Angle Sleeve { get; init; } = Angle.FromDegrees(2.0);

    /// <summary>A boat that did not lie as its level says, each way: 2.0°.</summary>
    public Angle Level { get; init; } = Angle.FromDegrees(2.0);

    /// <summary>A gauge knocked off its zero: 1.5°.</summary>
    public Angle GaugeZero { get; init; } = Angle.FromDegrees(1.5);
}
