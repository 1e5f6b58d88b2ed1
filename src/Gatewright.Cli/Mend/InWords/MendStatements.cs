using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Mend.Words;
using Gatewright.Cli.Speaking;
using Gatewright.Core.Mending;
using Gatewright.Planning;
using Gatewright.Planning.Told;
using Gatewright.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.InWords;

/// <summary>The plan in words alone.</summary>
internal static class MendStatements
{
    public static Statements Of(ShedMend shed)
    {
        var statements = new Statements();
        foreach (PlannedBoat boat in shed.Plan.Boats.Where(boat => boat.Outcome != BoatOutcome.Good))
        {
            Boat(statements, boat);
            statements.Pause();
        }

        List(statements, "Take along from the shelf", ListWords.TakeAlong(shed.Plan));
        List(statements, "To buy", ListWords.ToBuy(shed.Plan));
        if (shed.Stores is null && shed.NeedsAttention)
        {
            statements.Add(ListWords.NoStores);
        }

        statements.Pause();
        Shed(statements, shed);
        return statements;
    }

    private static void Boat(Statements statements, PlannedBoat boat)
    {
        statements.Add($"Boat {boat.Check.Verdict.Boat}, class {boat.Check.Verdict.Class}: {Core.Judging.Verdicts.Word(boat.Check.Verdict.Verdict)}.");
        statements.Add(OutcomeWords.Of(boat));
        Jobs(statements, boat, "today", boat.Jobs);
        Jobs(statements, boat, "once the parts are there", boat.AfterBuying);
        Add(statements, "Again", OutcomeWords.GatesToReadAgain(boat));
        Add(statements, "Next", PlanDocument.Next(boat, English));
        Add(statements, "Mind", JobWords.Mind(boat.Jobs.Concat(boat.AfterBuying)));
        Add(statements, "Caution", English.Cautions.For(boat.Check.Verdict));
    }

    private static void Jobs(Statements statements, PlannedBoat boat, string when, IReadOnlyList<MendingJob> jobs)
    {
        foreach (MendingJob job in jobs)
        {
            string notes = string.Concat(JobWords.Notes(job, boat.Check.Settings.Standard).Select(note => $" {note}"));
            string takes = JobWords.Takes(job) is { } parts ? $" Takes {parts}." : string.Empty;
            statements.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"{Sentence.Capital(job.Gate.ToString())}, {when}, about {job.Option.Minutes} minutes: {English.Work.Instruction(job.Option.Steps)}{notes}{takes} Then expect, in degrees, {JobWords.Expect(job)}."));
        }
    }

    private static void List(Statements statements, string heading, IEnumerable<(PartCount Part, string Boats)> parts)
    {
        List<string> lines = [.. parts.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Part.Count} of {p.Part.Part}, for {p.Boats}"))];
        statements.Add($"{heading}: {(lines.Count == 0 ? "nothing" : string.Join("; ", lines))}.");
    }

    private static void Shed(Statements statements, ShedMend shed)
    {
        statements.Add($"The shed: {Figures.Count(shed.Check.Boats.Count, "boat")}, about {Figures.Count(shed.Plan.Minutes, "minute")} of work today.");
        foreach ((string words, IReadOnlyList<string> boats) in PlanWords.Outcomes(shed.Plan))
        {
            if (boats.Count > 0)
            {
                statements.Add($"{Sentence.Capital(words)}, {Figures.Count(boats.Count, "boat")}: {string.Join(", ", boats)}.");
            }
        }

        if (English.Shed.TreatAsStop(shed.Check.Told) is { } more)
        {
            statements.Add($"{more}.");
        }

        foreach (string warning in English.Shed.Warnings(shed.Check.Told))
        {
            statements.Add($"Warning: {warning}.");
        }

        statements.Pause();
        statements.Add(PlanWords.Proof(shed.Plan));
        statements.Add(PlanWords.ThenRead);
        foreach (string limits in English.Standards.Limits(shed.Check.Boats, shed.Check.Standard))
        {
            statements.Add(limits);
        }

        statements.Add(PlanWords.Rests);
        if (shed.NeedsAttention)
        {
            statements.Add(English.Cautions.Lifting);
        }

        statements.Add(English.Cautions.Precedence);
    }

    private static void Add(Statements statements, string word, string? text)
    {
        if (!string.IsNullOrEmpty(text))
        {
            statements.Add($"{word}: {text}");
        }
    }
}
