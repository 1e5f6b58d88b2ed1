using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Words;
using Gatewright.Words.Suspected;

namespace Gatewright.Journal.Jobs;

/// <summary>What a job can be planned for at a gate, or on a whole boat.</summary>
/// <param name="Gate">The gate; null while none is chosen.</param>
/// <param name="Causes">What may be wrong there, the likeliest first.</param>
/// <param name="Gates">The gates that are not good, the worst first, for whoever has still to choose one.</param>
/// <param name="IsShared">Whether level or gauge is probably the trouble: nothing is mended then before the boat is read again.</param>
/// <param name="Twins">Which causes these readings cannot tell apart, where the gate has one of them.</param>
public sealed record JobChoice(
    GatePlace? Gate, IReadOnlyList<CauseOffered> Causes, IReadOnlyList<GateVerdict> Gates, bool IsShared, IReadOnlyList<string> Twins)
{
    /// <summary>What can be chosen. Asks for the boat's diagnosis.</summary>
    /// <param name="check">The boat.</param>
    /// <param name="gate">The gate; null for what the whole boat shares.</param>
    /// <param name="say">The language causes are named in.</param>
    public static JobChoice Of(BoatCheck check, GatePlace? gate, Wording say)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(say);
        bool isShared = SharedFault.IsProbable(check);
        IEnumerable<CauseOffered> ofBoat = OfBoat(check, say);
        IEnumerable<CauseOffered> ofGate = gate is { } at ? OfGate(check, at, say) : [];
        return new(
            gate,
            [.. isShared ? ofBoat.Concat(ofGate) : ofGate.Concat(ofBoat)],
            [.. check.Verdict.Gates.Where(g => g.Verdict != Verdict.Good).OrderByDescending(g => g.Verdict).ThenBy(g => g.Gate)],
            isShared,
            gate is { } here && check.Diagnosis.Twins.Any(t => t.One.Touches(here) || t.Other.Touches(here))
                ? [.. say.Causes.Twins(check)]
                : []);
    }

    private static IEnumerable<CauseOffered> OfBoat(BoatCheck check, Wording say) => Remedies.ForBoat(check)
        .GroupBy(r => r.Part)
        .Select(g => new CauseOffered(g.Key, say.Causes.SomeHere(g.Key), check.Diagnosis.Probability(p => p == g.Key), [.. g]));

    /// <summary>
    /// Each cause worth telling of a gate, likely enough for a spanner or not: whoever stands before the gate may see what
    /// no reading shows. What these have no remedy for is offered without.
    /// </summary>
    private static IReadOnlyList<CauseOffered> OfGate(BoatCheck check, GatePlace gate, Wording say)
    {
        if (check.Diagnosis.Gates.FirstOrDefault(g => g.Gate == gate) is not { } found)
        {
            return [];
        }

        ILookup<Cause, Remedy> likely = Remedies.For(check, gate, MendingSettings.Default).ToLookup(r => r.Part.Cause);
        return [.. CauseChoice.Of(found).Zip(say.Causes.Of(found), (cause, told) => cause.Cause is { } of
            ? new CauseOffered(new(of, gate), told.Words, told.Probability, likely.Contains(of) ? [.. likely[of]] : Unlikely(check, new(of, gate), gate))
            : new CauseOffered(null, told.Words, told.Probability, []))];
    }

    private static IReadOnlyList<Remedy> Unlikely(BoatCheck check, CausePart part, GatePlace gate) =>
        check.Diagnosis.Probability(p => p == part) > 0 ? Remedies.For(check, part, gate, MendingSettings.Default) : [];
}

/// <summary>Something that may be wrong, with what can be done about it.</summary>
/// <param name="Part">What; null for a gate that is probably as it should be.</param>
/// <param name="Words">The same in words.</param>
/// <param name="Probability">0 to 1.</param>
/// <param name="Remedies">What can be done, the quickest first.</param>
public sealed record CauseOffered(CausePart? Part, string Words, double Probability, IReadOnlyList<Remedy> Remedies);
