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
            IReadOnlyList<string> names = ShedWords.Names(shed, verdict);
            string what = $"{Sentence.Capital(verdict.Word())}: {Figures.Count(names.Count, "boat")}";
            statements.Add(names.Count == 0 ? $"{what}." : $"{what}, {string.Join(", ", names)}. {ShedWords.WhatNow(verdict)}".TrimEnd());
        }

        foreach (string warning in ShedWords.Warnings(shed))
        {
            statements.Add($"Warning: {warning}.");
        }

        statements.Pause();
        statements.Add(StandardWords.Limits(shed.Standard));
        statements.Add(StandardWords.PlusMinus);
        if (shed.NeedsAttention)
        {
            statements.Add(Cautions.Lifting);
        }

        statements.Add(Cautions.Precedence);
        return statements;
    }
}
