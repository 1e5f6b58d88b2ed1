namespace Gatewright.Planning.Choosing;

/// <summary>How long the solver may look.</summary>
/// <param name="WorkPerAim">
/// The most work for one aim, in the solver's own units, about a second each on a machine of today. A count of work and
/// not of time, so that the same question has the same answer on any machine.
/// </param>
/// <param name="Seed">Where its chances start from.</param>
public sealed record SolverLimits(double WorkPerAim = 8, int Seed = 1)
{
    /// <summary>The defaults.</summary>
    public static SolverLimits Default { get; } = new();
}
