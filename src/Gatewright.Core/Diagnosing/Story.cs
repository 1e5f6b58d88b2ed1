namespace Gatewright.Core.Diagnosing;

/// <summary>A joint account of everything that is wrong with a boat's readings: nothing, one cause, or two.</summary>
/// <param name="Parts">What is wrong; empty when nothing is.</param>
/// <param name="Probability">How likely this story is, given all that was read and reported.</param>
public sealed record Story(IReadOnlyList<CausePart> Parts, double Probability)
{
    /// <summary>Whether this is the story that nothing is wrong.</summary>
    public bool IsNone => Parts.Count == 0;

    /// <summary>"none", or its parts joined by "and".</summary>
    public override string ToString() => IsNone ? Causes.NoneCode : string.Join(" and ", Parts);
}
