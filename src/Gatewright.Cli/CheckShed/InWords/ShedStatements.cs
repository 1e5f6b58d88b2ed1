using Gatewright.Cli.CheckShed.Words;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.InWords;

/// <summary>The report in words alone.</summary>
internal static class ShedStatements
{
    public static Statements Of(ShedCheck shed, CheckRequest request)
    {
        var statements = new Statements();
        foreach (BoatCheck boat in shed.Boats)
        {
            BoatStatements.Write(statements, boat, request);
            statements.Pause();
        }

        int gates = shed.Boats.Sum(boat => boat.Verdict.Gates.Count);
        statements.Add($"The shed: {Figures.Count(shed.Boats.Count, "boat")}, {Figures.Count(gates, "gate")} read.");
        foreach (Verdict verdict in Verdicts.All.Reverse())
        {
            IReadOnlyList<BoatCheck> boats = ShedWords.Boats(shed, verdict);
            statements.Add($"{Sentence.Capital(verdict.Word())}: {Figures.Count(boats.Count, "boat")}{WhatNow(verdict, boats)}.");
            if (verdict == Verdict.Stop && ShedWords.TreatAsStop(shed) is { } more)
            {
                statements.Add($"{more}.");
            }
        }

        if (ShedWords.HeldWhateverTheyRead(shed) is { } held)
        {
            statements.Add($"{held}.");
        }

        foreach (string warning in ShedWords.Warnings(shed))
        {
            statements.Add($"Warning: {warning}.");
        }

        statements.Pause();
        foreach (string limits in StandardWords.Limits(shed))
        {
            statements.Add(limits);
        }

        statements.Add(StandardWords.PlusMinus);
        if (shed.NeedsAttention)
        {
            statements.Add(Cautions.Lifting);
        }

        statements.Add(Cautions.Precedence);
        return statements;
    }

    private static string WhatNow(Verdict verdict, IReadOnlyList<BoatCheck> boats) =>
        boats.Count == 0 ? string.Empty
        : verdict == Verdict.Good ? $", {string.Join(", ", boats.Select(ShedWords.Name))}"
        : $", {ShedWords.WhatNow(verdict)}. {string.Join(". ", boats.Select(ShedWords.Trouble))}";
}
