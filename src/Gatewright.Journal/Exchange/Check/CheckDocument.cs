namespace Gatewright.Journal.Exchange.Check;

/// <summary>What a check of a shed found, as it is written for other programs; docs/check-format.md describes it.</summary>
/// <remarks>The records of this folder are the format: a property here is a key there, and a key is never left out.</remarks>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="Standard">The limits the boats were judged by.</param>
/// <param name="Boats">The boats, in the order in which they were given.</param>
/// <param name="Warnings">What was odd about the input and did not stop it from being read.</param>
/// <param name="Rigs">The rigs of those boats of which something was measured, in the same order.</param>
public sealed record CheckDocument(
    string Format,
    CheckedStandard Standard,
    IReadOnlyList<CheckedBoat> Boats,
    IReadOnlyList<CheckedProblem> Warnings,
    IReadOnlyList<CheckedRig> Rigs)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.check/1";
}
