using Gatewright.Core.Mending;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning;

/// <summary>What a plan is made by.</summary>
public sealed record PlanSettings
{
    /// <summary>The defaults.</summary>
    public static PlanSettings Default { get; } = new();

    /// <summary>How mending works and how well it hits.</summary>
    public MendingSettings Mending { get; init; } = MendingSettings.Default;

    /// <summary>How long the solver may look.</summary>
    public SolverLimits Limits { get; init; } = SolverLimits.Default;
}
