using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Planning.Choosing;
using Gatewright.Words;
using Gatewright.Words.ToRead;

namespace Gatewright.Planning.Told;

/// <summary>Turns a plan into the document that programs read.</summary>
public static class PlanDocument
{
    /// <summary>A plan as written.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="standard">What the boats were judged by.</param>
    /// <param name="stores">What lies on the shelf; null when nobody said.</param>
    /// <param name="warnings">What was odd about the input.</param>
    /// <param name="say">The language of its sentences.</param>
    public static MendDocument Of(
        ShedPlan plan, Standard standard, Stores? stores, IEnumerable<CheckedProblem> warnings, Wording say)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(say);
        return new(
            MendDocument.Name,
            CheckedStandard.Of(standard),
            stores is null ? null : [.. stores.Parts.Select(Supply)],
            [.. plan.Boats.Select(boat => Boat(boat, say))],
            [.. plan.Parts.Select(Supply)],
            [.. plan.Shopping.Select(Supply)],
            Totals(plan),
            [.. plan.Aims.Select(Aim)],
            [.. plan.ShoppingAims.Select(Aim)],
            [.. warnings]);
    }

    /// <summary>
    /// The reading that would tell most, where no part is known to help; null for any other boat, and where no single
    /// reading would tell much.
    /// </summary>
    public static string? Next(PlannedBoat boat, Wording say)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(say);
        bool isStuck = boat.Outcome == BoatOutcome.ReadAgain
            || (boat.Outcome != BoatOutcome.Good && boat.OutcomeAfterBuying != BoatOutcome.Mended);
        return isStuck && NextWords.For(boat.Check).Next is { } next ? say.Next.What(next) : null;
    }

    private static PlannedBoatDocument Boat(PlannedBoat boat, Wording say)
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
            [.. boat.Jobs.Select(job => Job(job, say))],
            [.. boat.GatesToReadAgain.Select(gate => new CheckedGate(gate.Seat, gate.Side.Word()))],
            [.. boat.AfterBuying.Select(job => Job(job, say))],
            boat.OutcomeAfterBuying.Code(),
            Next(boat, say));
    }

    private static PlannedJob Job(MendingJob job, Wording say) => new(
        job.Gate.Seat,
        job.Gate.Side.Word(),
        job.Before.Word(),
        [.. job.Option.Kinds.Select(kind => kind.Code())],
        say.Work.Instruction(job.Option.Steps),
        [.. job.Option.Parts.Select(CheckedSupply.Of)],
        job.Option.Minutes,
        say.Cautions.Each(job.Option.Cautions),
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
