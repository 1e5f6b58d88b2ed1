namespace Gatewright.Planning.Choosing;

/// <summary>What was chosen, and how good it is.</summary>
/// <param name="Chosen">Of each group, the option.</param>
/// <param name="Aims">How well each aim was met, in their order.</param>
internal sealed record Solution(IReadOnlyList<int> Chosen, IReadOnlyList<AimResult> Aims);
