using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What is told of a shed as a whole.</summary>
internal static class ShedWords
{
    /// <summary>What was odd about the input or its readings, a sentence each without its full stop.</summary>
    public static IEnumerable<string> Warnings(ShedCheck shed) =>
        shed.Warnings.Select(warning => warning.ToString().TrimEnd('.'))
            .Concat(shed.Boats.SelectMany(boat => BoatWords.Notices(boat).Select(notice => $"{Name(boat)}: {notice}")));

    /// <summary>What a verdict asks for; of `good`, nothing.</summary>
    public static string WhatNow(Verdict verdict) => verdict switch
    {
        Verdict.Stop => "not out on the water until mended and read again",
        Verdict.Adjust => "mend when convenient",
        Verdict.Unsure => "read again, or better",
        _ => string.Empty,
    };

    /// <summary>The boats of a verdict.</summary>
    public static IReadOnlyList<BoatCheck> Boats(ShedCheck shed, Verdict verdict) =>
        [.. shed.Boats.Where(boat => boat.Verdict.Verdict == verdict)];

    /// <summary>
    /// The boats that stand under another verdict and are to be treated as `stop` all the same; null when there are none.
    /// </summary>
    public static string? TreatAsStop(ShedCheck shed)
    {
        List<string> names = [.. shed.Boats.Where(boat => Cautions.IsToBeTreatedAsStop(boat.Verdict)).Select(Name)];
        return names.Count == 0 ? null : $"Treat as stop until read again: {string.Join(", ", names)}";
    }

    /// <summary>The boats that somebody holds, under whatever verdict they stand; null when there are none.</summary>
    public static string? HeldWhateverTheyRead(ShedCheck shed)
    {
        List<string> names = [.. shed.Warnings.Where(HeldAshore.Is).Select(hold => hold.Value!).Distinct()];
        return names.Count == 0 ? null : $"Held ashore, whatever the gates read: {string.Join(", ", names)}";
    }

    /// <summary>"Heron 8+"; of a boat of which only oars were read, that no gate was.</summary>
    public static string Name(BoatCheck check) =>
        $"{check.Verdict.Boat} {check.Verdict.Class}{(check.Verdict.Gates.Count == 0 ? " (no gate was read)" : string.Empty)}";

    /// <summary>"Heron 8+: seat 5 port; check level and gauge first": what is not good, and what comes before its verdict's advice.</summary>
    public static string Trouble(BoatCheck check)
    {
        const int MostNamed = 2;
        List<string> gates = [.. check.Verdict.Gates.Where(g => g.Verdict != Verdict.Good).Select(g => g.Gate.ToString())];
        string where = gates.Count > MostNamed ? Figures.Count(gates.Count, "gate") : string.Join(", ", gates);
        string first = WholeBoatWords.IsProbablyTheReading(check) ? "; check level and gauge first" : string.Empty;
        return $"{Name(check)}: {where}{first}";
    }
}
