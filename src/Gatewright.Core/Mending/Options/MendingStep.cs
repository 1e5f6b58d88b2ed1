using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Mending.Options;

/// <summary>One thing that can be done to a gate.</summary>
/// <param name="Kind">What.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Minutes">How long it takes, roughly.</param>
internal abstract record MendingStep(RemedyKind Kind, IReadOnlyList<Part> Parts, int Minutes)
{
    /// <summary>What to do, with amount and direction.</summary>
    public abstract Work Work { get; }

    /// <summary>What the gate becomes.</summary>
    /// <param name="before">What it is.</param>
    /// <param name="cause">What is wrong with it in the story told; null for nothing.</param>
    public abstract GateBelief Apply(GateBelief before, Cause? cause);

    /// <summary>Whether it sets right what a cause put wrong, rather than making up for it elsewhere.</summary>
    public abstract bool Mends(Cause cause);
}
