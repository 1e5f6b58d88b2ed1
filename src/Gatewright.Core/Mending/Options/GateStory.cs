using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Mending.Options;

/// <summary>One account of a gate: what is wrong with it, how likely that is, and what the gate then is.</summary>
/// <param name="Cause">What is wrong with this gate; null for nothing.</param>
/// <param name="Probability">Of the account; those of one gate sum to 1.</param>
/// <param name="Belief">The gate's state if it is true.</param>
internal sealed record GateStory(Cause? Cause, double Probability, GateBelief Belief);
