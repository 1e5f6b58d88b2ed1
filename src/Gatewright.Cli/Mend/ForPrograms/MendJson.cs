using System.Text.Encodings.Web;
using System.Text.Json.Serialization;
using System.Text.Json;
using Gatewright.Cli.Mend.Words;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Planning.Choosing;
using Gatewright.Planning;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.ForPrograms;

/// <summary>Writes a plan as JSON: the same plan always gives the same bytes.</summary>
internal static class MendJson
{
    private static readonly MendJsonContext Context = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.Never,
        WriteIndented = true,
        NewLine = "\n",

        // ° and ± stay readable; the text is never put into a web page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    public static string Of(ShedMend shed) => JsonSerializer.Serialize(Document(shed), Context.MendDocument);

    private static MendDocument Document(ShedMend shed) => new(
        MendDocument.Name,
        CheckedStandard.Of(shed.Check.Standard),
        shed.Stores is null ? null : [.. shed.Stores.Parts.Select(Supply)],
        [.. shed.Plan.Boats.Select(Boat)],
        [.. shed.Plan.Parts.Select(Supply)],
        [.. shed.Plan.Shopping.Select(Supply)],
        Totals(shed.Plan),
        [.. shed.Plan.Aims.Select(Aim)],
        [.. shed.Plan.ShoppingAims.Select(Aim)],
        [.. shed.Check.Warnings.Select(CheckedProblem.Of)]);

    private static PlannedBoatDocument Boat(PlannedBoat boat)
    {
        BoatVerdict verdict = boat.Check.Verdict;
        return new(
            verdict.Boat,
            verdict.Class.Name,
            verdict.Verdict.Word(),
            verdict.StaysAshore,
            boat.Outcome.Code(),
            boat.ReadAgain?.Code(),
            boat.Minutes,
            [.. boat.Jobs.Select(Job)],
            [.. boat.GatesToReadAgain.Select(gate => new CheckedGate(gate.Seat, gate.Side.Word()))],
            [.. boat.AfterBuying.Select(Job)],
            boat.OutcomeAfterBuying.Code(),
            OutcomeWords.Next(boat));
    }

    private static PlannedJob Job(MendingJob job) => new(
        job.Gate.Seat,
        job.Gate.Side.Word(),
        job.Before.Word(),
        [.. job.Option.Kinds.Select(kind => kind.Code())],
        English.Work.Instruction(job.Option.Steps),
        [.. job.Option.Parts.Select(CheckedSupply.Of)],
        job.Option.Minutes,
        English.Cautions.Each(job.Option.Cautions),
        job.Option.MakesUpFor?.Code(),
        job.IsForRange,
        job.IsProbablySound,
        [.. job.Expected.Select(CheckedExpectation.Of)]);

    private static PlannedTotals Totals(ShedPlan plan) => new(
        plan.Boats.Count,
        plan.Count(BoatOutcome.Good),
        plan.Count(BoatOutcome.Mended),
        plan.Count(BoatOutcome.AboveFloors),
        plan.Count(BoatOutcome.Left),
        plan.Count(BoatOutcome.ReadAgain),
        plan.Boats.Count(boat => boat.OutcomeAfterBuying == BoatOutcome.Mended),
        plan.Parts.Sum(part => part.Count),
        plan.Minutes,
        plan.IsProven);

    private static PlannedSupply Supply(PartCount part) => new(part.Part.Kind.Word(), part.Part.Size, part.Count);

    private static PlannedAim Aim(AimResult aim) => new(aim.Name, aim.Value, aim.Bound);
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSerializable(typeof(MendDocument))]
internal sealed partial class MendJsonContext : JsonSerializerContext;
