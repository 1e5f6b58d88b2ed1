namespace Gatewright.Core.Advising;

/// <summary>What to read next, or that enough has been read.</summary>
/// <param name="CausesFound">
/// Whether every gate's cause, or that nothing is wrong with it, is probable enough, and likewise of level and gauge.
/// </param>
/// <param name="VerdictsSettled">
/// Whether no reading leaves a verdict open, and at every station that was not read it is probable enough whether the
/// pitch is below the floor, outside the limits or inside.
/// </param>
/// <param name="IsDecided">
/// Whether there is nothing left to find out: every gate that was judged not good has its cause found, and so has every
/// other; or none was judged other than good, and that is settled.
/// </param>
/// <param name="Next">The reading that tells most a second; null when none is needed, or none is worth taking.</param>
/// <param name="Others">The other readings considered, best first.</param>
public sealed record Advice(
    bool CausesFound, bool VerdictsSettled, bool IsDecided, NextReading? Next, IReadOnlyList<NextReading> Others);
