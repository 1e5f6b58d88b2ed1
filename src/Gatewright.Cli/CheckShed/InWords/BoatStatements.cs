using Gatewright.Cli.CheckShed.Words;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.InWords;

/// <summary>One boat in words alone; short where nothing is wrong.</summary>
internal static class BoatStatements
{
    public static void Write(Statements statements, BoatCheck check, CheckRequest request)
    {
        BoatVerdict boat = check.Verdict;
        statements.Add($"Boat {boat.Boat}, class {boat.Class}: {(boat.Gates.Count == 0 ? BoatWords.NoGate : boat.Verdict.Word())}.");
        statements.Add($"Read: {BoatWords.HowRead(check)}.");
        if (boat.Verdict == Verdict.Good && !request.All && boat.Gates.Count > 0)
        {
            statements.Add($"All gates read are good: {BoatWords.Spread(boat)}.");
        }
        else
        {
            foreach (GateVerdict gate in boat.Gates)
            {
                statements.Add($"{Sentence.Capital(gate.Gate.ToString())}: {gate.Verdict.Word()}; in degrees, {Pitches(gate)}.");
            }
        }

        if (boat.NotRead.Count > 0)
        {
            statements.Add($"Not read at all: {BoatWords.NotRead(boat)}; the verdict says nothing of them.");
        }

        foreach (string notice in BoatWords.Notices(check))
        {
            statements.Add($"Notice: {notice}.");
        }

        if (boat.Verdict != Verdict.Good)
        {
            WhatIsIt(statements, boat, request.All);
            Why(statements, check);
            ToDoStatements.Write(statements, check, request.All);
            if (Cautions.For(boat) is { } caution)
            {
                statements.Add($"Caution: {caution}");
            }
        }

        if (request.Explain)
        {
            Explain(statements, check);
        }
    }

    private static void Explain(Statements statements, BoatCheck check)
    {
        string which = BudgetWords.IsNearest(check) ? "Nearest to a limit" : "Where the uncertainty comes from";
        foreach (CorrectedPitch pitch in BudgetWords.Of(check))
        {
            statements.Add($"{which}, {BudgetWords.Sentence(pitch)}");
        }
    }

    private static string Pitches(GateVerdict gate) => string.Join(", ", gate.Pitches.Select(pitch => pitch.Read
        ? $"{pitch.At} {Bare(pitch)}"
        : $"{pitch.At} not read, expected {Bare(pitch)}"));

    /// <summary>Without the unit, which is said once: a listener hears eight gates of this.</summary>
    private static string Bare(StationPitch pitch) =>
        $"{Figures.Degrees(pitch.Pitch.Value.Degrees)} ± {Figures.Degrees(pitch.Pitch.U.Degrees)}";

    private static void WhatIsIt(Statements statements, BoatVerdict boat, bool all)
    {
        statements.Add("What is it, as read:");
        foreach (GateVerdict gate in boat.Gates.OrderByDescending(gate => gate.Verdict))
        {
            foreach (Reason reason in ReasonChoice.Of(gate, all))
            {
                statements.Add($"{Sentence.Capital(reason.Verdict.Word())}: {ReasonSentence.Of(gate.Gate, reason, boat.Standard)}");
            }

            if (ReasonChoice.LeftOut(gate, all) is { } more)
            {
                statements.Add($"{Sentence.Capital(gate.Gate.ToString())}: {more}");
            }
        }
    }

    private static void Why(Statements statements, BoatCheck check)
    {
        statements.Add("Why, probably, from all readings of the boat and what is usual among gates:");
        Why(statements, "The whole boat", WholeBoatWords.Of(check));
        if (WholeBoatWords.HowItLay(check) is { } lay)
        {
            statements.Add(lay);
        }

        foreach (GateDiagnosis gate in CauseWords.WorthTellingOf(check))
        {
            string place = Sentence.Capital(gate.Gate.ToString());
            Why(statements, place, CauseWords.Of(gate));
            statements.Add($"{place}: {CauseWords.ProbablyIs(gate)}");
        }

        foreach (string twins in TwinWords.Of(check))
        {
            statements.Add(twins);
        }
    }

    private static void Why(Statements statements, string place, IEnumerable<(string Words, double Probability)> causes)
    {
        string likely = string.Join("; ", causes.Select(cause => $"{cause.Words}, {Figures.Percent(cause.Probability)}"));
        if (likely.Length > 0)
        {
            statements.Add($"{place}, likely: {likely}.");
        }
    }
}
