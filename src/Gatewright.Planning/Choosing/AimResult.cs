namespace Gatewright.Planning.Choosing;

/// <summary>How well one aim was met.</summary>
/// <param name="Name">The aim.</param>
/// <param name="Value">What was reached.</param>
/// <param name="Bound">What is proven that no choice can better.</param>
public sealed record AimResult(string Name, long Value, long Bound)
{
    /// <summary>Whether it is proven that there is none better, the aims before it being met as they are.</summary>
    public bool IsProven => Value == Bound;
}
