namespace Gatewright.Core.Geometry;

/// <summary>What one gate is: the pitch built into it, and how its pin leans. Says nothing of hull or oar.</summary>
/// <param name="GatePitch">Angle built into gate and insert, relative to the pin.</param>
/// <param name="Pin">Lean of the pin.</param>
public readonly record struct GateState(GatePitch GatePitch, PinLean Pin)
{
    /// <summary>A gate of so many degrees on a pin leaning so many degrees aft and out.</summary>
    public static GateState FromDegrees(double gatePitch, double aft, double @out) =>
        new(GatePitch.FromDegrees(gatePitch), PinLean.FromDegrees(aft, @out));
}
