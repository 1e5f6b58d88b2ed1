using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Drawings.Plan;

namespace Gatewright.App.Round;

/// <summary>What a plan shows while a boat is read.</summary>
/// <param name="Gates">The gates.</param>
/// <param name="Lit">The gate that is read now; null for none.</param>
/// <param name="OarAt">Where in the stroke it is read; null where that is no face.</param>
internal sealed record PlanShown(IReadOnlyList<PlanGate> Gates, GatePlace? Lit, OarAngle? OarAt);
