using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;

namespace Gatewright.Words.ToMend;

/// <summary>Which ways to mend are told of a boat.</summary>
public static class RemedyChoice
{
    /// <summary>Of the likeliest cause every remedy is told, of the others the quickest, unless all are asked for.</summary>
    public static IReadOnlyList<Remedy> OfGate(BoatCheck check, GatePlace gate, bool all)
    {
        IReadOnlyList<Remedy> remedies = Remedies.For(check, gate, MendingSettings.Default);
        return all
            ? remedies
            : [.. remedies.GroupBy(remedy => remedy.Part).SelectMany((cause, rank) => rank == 0 ? cause : cause.Take(1))];
    }

    /// <summary>What to do about what the whole boat shares.</summary>
    public static IReadOnlyList<Remedy> OfBoat(BoatCheck check) => Remedies.ForBoat(check);

    /// <summary>The gates to mend: those that are not good, unless it is probably the reading that is wrong.</summary>
    public static IEnumerable<GatePlace> Gates(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return SharedFault.IsProbable(check)
            ? []
            : check.Verdict.Gates.Where(gate => gate.Verdict != Verdict.Good).Select(gate => gate.Gate);
    }
}
