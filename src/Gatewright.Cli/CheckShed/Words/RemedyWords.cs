using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What to do about what is probably wrong.</summary>
internal static class RemedyWords
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
    public static IEnumerable<GatePlace> Gates(BoatCheck check) => WholeBoatWords.IsProbablyTheReading(check)
        ? []
        : check.Verdict.Gates.Where(gate => gate.Verdict != Verdict.Good).Select(gate => gate.Gate);

    /// <summary>"washer 2 mm, washer 1 mm", or null when nothing is taken from stores.</summary>
    public static string? Takes(Remedy remedy) =>
        remedy.Parts.Count == 0 ? null : string.Join(", ", remedy.Parts);

    /// <summary>"catch 3.0 to 4.9, abeam 3.1 to 4.9, finish 3.0 to 4.9", in degrees; null where only reading again tells.</summary>
    public static string? Expect(Remedy remedy) => remedy.Expected.Count == 0 ? null : string.Join(", ", remedy.Expected.Select(e =>
        $"{e.At} {Figures.Degrees(e.From.Degrees)} to {Figures.Degrees(e.To.Degrees)}"));

    /// <summary>The cautions of some remedies, each once, without what is said under every check.</summary>
    public static string Mind(IEnumerable<Remedy> remedies) => string.Join(
        " ",
        remedies.SelectMany(remedy => remedy.Cautions).Distinct().Where(caution => caution != Core.Mending.Cautions.Defer));
}
