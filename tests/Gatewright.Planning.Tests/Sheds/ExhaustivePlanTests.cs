using FsCheck.Xunit;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>Plans against every plan there is, needless options included: so none of those that are left out is missed.</summary>
public class ExhaustivePlanTests
{
    [Property(MaxTest = 30)]
    public void No_plan_with_what_is_on_the_shelf_is_better(int seed)
    {
        var shed = new DrawnShed(seed);
        ShedPlan plan = shed.Plan();
        List<ShedBoat> boats = [.. shed.Boats.Where(b =>
            b.Check.Verdict.Verdict != Core.Judging.Verdict.Good && Triage.ReadAgain(b.Check) is null)];
        if (boats.Count == 0)
        {
            Assert.Empty(plan.Aims);
            return;
        }

        long[] best = EveryPlan.Best(
            [.. boats.Select(b => Outcomes(shed, b.Check, _ => 0))],
            parts => parts.All(p => p.Count <= shed.Stores.Count(p.Part)),
            parts => parts.Sum(p => p.Count),
            place: 4);

        // Nothing was done before today, so nothing of it is kept.
        Assert.Equal(0, best[2]);
        Assert.Equal([.. best[..2], .. best[3..]], plan.Aims.Select((a, i) => i < 2 ? -a.Value : a.Value));
        Assert.True(plan.IsProven);
    }

    [Property(MaxTest = 15)]
    public void No_shopping_list_is_shorter_and_none_brings_more_boats_inside(int seed)
    {
        var shed = new DrawnShed(seed);
        ShedPlan plan = shed.Plan();
        List<PlannedBoat> rest = [.. plan.Boats.Where(b => b.Outcome is BoatOutcome.AboveFloors or BoatOutcome.Left)];
        if (rest.Count == 0)
        {
            Assert.Empty(plan.Shopping);
            return;
        }

        Stores shelf = shed.Stores.Without(PartCount.Of(plan.Boats.Except(rest).SelectMany(b => b.Jobs).SelectMany(j => j.Option.Parts)));
        long[] best = EveryPlan.Best(
            [.. rest.Select(b => Outcomes(shed, b.Check, options => options.Count(o => b.Jobs.Any(j => IsSame(j.Option, o)))))],
            _ => true,
            parts => parts.Sum(p => Math.Max(0, p.Count - shelf.Count(p.Part))),
            place: 3);

        // The parts used stand behind the deviation in the account; here they are left to the other test.
        long[] told = [.. plan.ShoppingAims.Select((a, i) => i < 3 ? -a.Value : a.Value)];
        Assert.Equal(best[..5], told[..5]);
        Assert.Equal(best[3], plan.Shopping.Sum(p => p.Count));
        Assert.True(plan.IsProven);
    }

    /// <summary>Boats above their floors, inside, jobs kept, deviation, minutes, jobs that make up; the larger the better first three.</summary>
    private static IReadOnlyList<(IReadOnlyList<PartCount> Parts, long[] Figures)> Outcomes(
        DrawnShed shed, Core.Checking.BoatCheck check, Func<IReadOnlyList<GateOption>, int> kept) =>
        [.. EveryBoat.Of(check, PartSizes.Of(DrawnShed.Settings.Mending, shed.Stores)).Select(o => (
            PartCount.Of(o.Parts),
            new long[] { o.IsAboveFloors ? -1 : 0, o.IsInside ? -1 : 0, -kept(o.Options), o.Deviation, o.Minutes, o.MadeUpFor }))];

    private static bool IsSame(GateOption one, GateOption other) =>
        !other.IsLeft && one.Gate == other.Gate && one.Instruction == other.Instruction;
}
