using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning;

/// <summary>Makes plans for a shed.</summary>
/// <param name="settings">What they are made by.</param>
public sealed class Planner(PlanSettings settings)
{
    private readonly ChoiceSolver _solver = new(settings.Limits);

    /// <summary>The best plan for some boats with what is on the shelf. The order in which the boats are given decides nothing.</summary>
    public ShedPlan Plan(IEnumerable<ShedBoat> boats, Stores stores)
    {
        ArgumentNullException.ThrowIfNull(boats);
        ArgumentNullException.ThrowIfNull(stores);
        List<ShedBoat> all = [.. boats
            .OrderBy(b => b.Check.Readings.Boat, StringComparer.Ordinal)
            .ThenBy(b => b.Check.Readings.Class.Name, StringComparer.Ordinal)];
        PartSizes sizes = PartSizes.Of(settings.Mending, stores);
        List<BoatWork> work = [.. all.Where(IsForTheBench).Select(b => BoatWork.Of(b, sizes, settings.Mending))];

        Today today = Today.Of(work, stores, _solver);
        Later later = Later.Of(today, stores, _solver);
        IEnumerable<PlannedBoat> plans = all
            .Where(b => !IsForTheBench(b))
            .Select(b => NotMended(b.Check))
            .Concat(work.Select((boat, i) => Mended(boat, today.State(i), later.State(i))));
        return new(
            [.. plans
                .OrderByDescending(p => p.Check.Verdict.Verdict)
                .ThenBy(p => p.Outcome)
                .ThenBy(p => p.Check.Readings.Boat, StringComparer.Ordinal)],
            later.Bought,
            today.Aims,
            later.Aims);
    }

    private static bool IsForTheBench(ShedBoat boat) =>
        boat.Check.Verdict.Verdict != Verdict.Good && Triage.ReadAgain(boat.Check) is null;

    private static PlannedBoat NotMended(BoatCheck check) => check.Verdict.Verdict == Verdict.Good
        ? new(check, BoatOutcome.Good)
        : new(check, BoatOutcome.ReadAgain) { ReadAgain = Triage.ReadAgain(check) };

    private static PlannedBoat Mended(BoatWork boat, BoatState today, BoatState? later)
    {
        if (today.IsInside && today.Options.All(o => o.IsLeft))
        {
            return new(boat.Check, BoatOutcome.ReadAgain) { ReadAgain = ReadAgainReason.Doubt };
        }

        BoatState then = later ?? today;
        return new(boat.Check, Outcome(boat, today))
        {
            Jobs = Jobs(boat.Check, today.Options),
            GatesToReadAgain = today.IsInside ? boat.ToReadAgain(today.Options) : boat.ReadAgain,
            AfterBuying = Jobs(boat.Check, then.Options.Except(today.Options)),
            OutcomeAfterBuying = Outcome(boat, then),
        };
    }

    private static BoatOutcome Outcome(BoatWork boat, BoatState state) =>
        state.IsInside ? BoatOutcome.Mended
        : state.IsAboveFloors && boat.IsInDoubt ? BoatOutcome.AboveFloors
        : BoatOutcome.Left;

    private static IReadOnlyList<MendingJob> Jobs(BoatCheck check, IEnumerable<GateOption> options) =>
        [.. options.Where(o => !o.IsLeft).Select(o => Job(check, o))];

    private static MendingJob Job(BoatCheck check, GateOption option)
    {
        GateVerdict gate = check.Verdict.Gates.Single(g => g.Gate == option.Gate);
        return new(
            option,
            option.Expected(check),
            gate.Verdict,
            IsForRange: Triage.Own(gate) == Verdict.Good,
            IsProbablySound: Triage.IsProbablySound(check, option.Gate));
    }
}
