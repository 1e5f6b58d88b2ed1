using FsCheck.Xunit;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>What holds of every plan, on sheds too large to try everything.</summary>
public class PlanLawTests
{
    [Property(MaxTest = 25)]
    public void No_more_is_taken_than_lies_on_the_shelf(int seed)
    {
        var shed = new DrawnShed(seed, boats: 5);

        Assert.All(shed.Plan().Parts, p => Assert.InRange(p.Count, 1, shed.Stores.Count(p.Part)));
    }

    [Property(MaxTest = 15)]
    public void More_on_the_shelf_never_makes_a_worse_plan(int seed, byte more)
    {
        var shed = new DrawnShed(seed, boats: 4);
        IReadOnlyList<Part> parts = [.. shed.Stores.Parts.Select(p => p.Part)];
        Stores larger = shed.Stores.And([new(parts[more % parts.Count], 1 + (more / 100))]);

        Assert.False(EveryPlan.IsLess(Figures(shed.Plan()), Figures(shed.Plan(larger))));
    }

    [Property(MaxTest = 15)]
    public void The_order_in_which_boats_are_given_decides_nothing(int seed)
    {
        var shed = new DrawnShed(seed, boats: 4);
        ShedPlan turned = new Planner(DrawnShed.Settings).Plan(shed.Boats.Reverse(), shed.Stores);

        Assert.Equal(Told(shed.Plan()), Told(turned));
    }

    [Property(MaxTest = 15)]
    public void With_what_is_on_the_shopping_list_no_boat_is_left_that_parts_could_help(int seed)
    {
        var shed = new DrawnShed(seed, boats: 4);
        ShedPlan plan = shed.Plan();

        ShedPlan then = shed.Plan(shed.Stores.And(plan.Shopping));

        Assert.Equal(plan.Boats.Count(b => b.OutcomeAfterBuying == BoatOutcome.Mended), then.Count(BoatOutcome.Mended));
        Assert.Empty(then.Shopping);
        Assert.Equal(plan.Count(BoatOutcome.Good), then.Count(BoatOutcome.Good));
    }

    [Property(MaxTest = 15)]
    public void From_a_bare_shelf_nothing_is_taken_but_time(int seed)
    {
        ShedPlan plan = new DrawnShed(seed, boats: 4).Plan(Stores.Empty);

        Assert.Empty(plan.Parts);
        Assert.All(plan.Boats.SelectMany(b => b.Jobs), j => Assert.Empty(j.Option.Parts));
    }

    [Property(MaxTest = 15)]
    public void A_boat_that_is_mended_has_every_gate_inside_and_a_good_boat_is_left_alone(int seed)
    {
        ShedPlan plan = new DrawnShed(seed, boats: 5).Plan();

        foreach (PlannedBoat boat in plan.Boats)
        {
            HashSet<Core.GatePlace> done = [.. boat.Jobs.Select(j => j.Gate), .. boat.GatesToReadAgain];
            IEnumerable<GateVerdict> undone = boat.Check.Verdict.Gates.Where(g => !done.Contains(g.Gate));
            if (boat.Outcome == BoatOutcome.Mended)
            {
                Assert.NotEmpty(boat.Jobs);
                Assert.All(boat.Jobs, j => Assert.True(j.Option.Verdict is { IsAboveFloors: true, IsInside: true }));
                Assert.All(undone, g => Assert.Equal(Verdict.Good, Triage.Own(g)));
            }
            else if (boat.Outcome is BoatOutcome.Good or BoatOutcome.ReadAgain)
            {
                Assert.Empty(boat.Jobs.Concat(boat.AfterBuying));
                Assert.Equal(boat.Outcome == BoatOutcome.Good, boat.Check.Verdict.Verdict == Verdict.Good);
            }
        }
    }

    [Property(MaxTest = 15)]
    public void The_most_urgent_boats_stand_first(int seed)
    {
        ShedPlan plan = new DrawnShed(seed, boats: 5).Plan();

        Assert.Equal(plan.Boats.Select(b => b.Check.Verdict.Verdict).OrderDescending(), plan.Boats.Select(b => b.Check.Verdict.Verdict));
    }

    /// <summary>The less the better.</summary>
    private static IReadOnlyList<long> Figures(ShedPlan plan) => [.. plan.Aims.Select((a, i) => i < 2 ? -a.Value : a.Value)];

    private static IEnumerable<string> Told(ShedPlan plan) => plan.Boats.SelectMany(b => b.Jobs
        .Concat(b.AfterBuying)
        .Select(j => $"{b.Check.Readings.Boat}, {j.Gate}: {j.Option.Instruction}")
        .Prepend($"{b.Check.Readings.Boat}: {b.Outcome}, {b.OutcomeAfterBuying}"));
}
