using Gatewright.Cli.Drawing;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What is told of a shed as a whole.</summary>
internal static class ShedWords
{
    /// <summary>What was odd about the input or its readings, a sentence each without its full stop.</summary>
    public static IEnumerable<string> Warnings(ShedCheck shed) =>
        shed.Warnings.Select(warning => CellText.Tame(warning.ToString()).TrimEnd('.')).Concat(shed.Boats.SelectMany(boat => BoatWords.Disagreements(boat.Verdict)));

    /// <summary>What a verdict asks for; nothing where it asks for nothing.</summary>
    public static string WhatNow(Verdict verdict) => verdict switch
    {
        Verdict.Stop => "Not out on the water until mended and read again.",
        Verdict.Adjust => "Mend when convenient.",
        Verdict.Unsure => "Read again, or better.",
        _ => string.Empty,
    };

    /// <summary>The names of the boats of a verdict.</summary>
    public static IReadOnlyList<string> Names(ShedCheck shed, Verdict verdict) =>
        [.. shed.Boats.Select(boat => boat.Verdict).Where(boat => boat.Verdict == verdict).Select(Name)];

    private static string Name(BoatVerdict boat) =>
        $"{CellText.Tame(boat.Boat)} {boat.Class}"
        + (Cautions.IsToBeTreatedAsStop(boat) ? " (treat as stop until read again)" : string.Empty);
}
