namespace Gatewright.Core.Advising;

/// <summary>What to read next, or that enough has been read.</summary>
/// <param name="CausesFound">Whether every gate's cause, or that nothing is wrong with it, is probable enough.</param>
/// <param name="VerdictsSettled">Whether every station's verdict is probable enough.</param>
/// <param name="Next">The reading that tells most a second; null when none is worth taking.</param>
/// <param name="Others">The other readings considered, best first.</param>
public sealed record Advice(
    bool CausesFound, bool VerdictsSettled, NextReading? Next, IReadOnlyList<NextReading> Others)
{
    /// <summary>Whether there is no need to read on.</summary>
    public bool IsEnough => Next is null;
}
