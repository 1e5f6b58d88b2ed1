namespace Gatewright.Core.Diagnosing;

/// <summary>How likely one cause is at one gate, over all stories.</summary>
/// <param name="Cause">The cause; null for "nothing is wrong with this gate".</param>
/// <param name="Probability">0 to 1.</param>
public readonly record struct CauseProbability(Cause? Cause, double Probability)
{
    /// <summary>The cause's code, or "none".</summary>
    public string Code => Cause?.Code() ?? Causes.NoneCode;
}
