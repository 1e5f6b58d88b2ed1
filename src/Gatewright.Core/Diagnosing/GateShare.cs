namespace Gatewright.Core.Diagnosing;

/// <summary>What a sum over gates takes of one of them: so much a degree of each of its unknowns.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="GatePitch">Of its pitch.</param>
/// <param name="Aft">Of its pin's lean aft.</param>
/// <param name="Out">Of its pin's lean out.</param>
internal readonly record struct GateShare(GatePlace Gate, double GatePitch, double Aft, double Out);

/// <summary>What a sum takes of one unknown of the state: so much a degree.</summary>
/// <param name="At">Where it stands in the state.</param>
/// <param name="Weight">So much a degree of it.</param>
internal readonly record struct StateShare(int At, double Weight);
