using Gatewright.Core.Mending.Options;

namespace Gatewright.Planning;

/// <summary>A boat when what was chosen for it is done.</summary>
/// <param name="Options">What was chosen, gate by gate.</param>
/// <param name="IsAboveFloors">Whether no gate is below a floor or in doubt about one.</param>
/// <param name="IsInside">Whether it is wholly inside its standard.</param>
internal sealed record BoatState(IReadOnlyList<GateOption> Options, bool IsAboveFloors, bool IsInside);
