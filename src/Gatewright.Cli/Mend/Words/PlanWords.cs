using System.Globalization;
using Gatewright.Planning.Choosing;
using Gatewright.Planning;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.Words;

/// <summary>What is told of a plan as a whole.</summary>
internal static class PlanWords
{
    /// <summary>What a mended boat still wants.</summary>
    public const string ThenRead =
        "A boat counts as mended when it has been read again and reads as expected: until then its verdict stands.";

    /// <summary>What the plan rests on.</summary>
    public const string Rests =
        "Gates are mended from what is believed of them over all that may be wrong; limits, drop and range are judged where a gate was read, floors everywhere. "
        + "What the gauge should show is where 95 of 100 readings fall. Times are rough, lengths of the rig as usual: measure yours.";

    /// <summary>The boats that come out so, by name: "mended with what is on the shelf".</summary>
    public static IEnumerable<(string Words, IReadOnlyList<string> Boats)> Outcomes(ShedPlan plan)
    {
        yield return ("mended with what is on the shelf", Names(plan, b => b.Outcome == BoatOutcome.Mended));
        yield return ("clear of their floors, not yet inside", Names(plan, b => b.Outcome == BoatOutcome.AboveFloors));
        yield return ("wait for parts", Names(plan, b => IsLeft(b) && b.OutcomeAfterBuying == BoatOutcome.Mended));
        yield return ("not helped by parts: read on", Names(plan, b => IsLeft(b) && b.OutcomeAfterBuying != BoatOutcome.Mended));
        yield return ("to be read again first", Names(plan, b => b.Outcome == BoatOutcome.ReadAgain));
        yield return ("good as they were read", Names(plan, b => b.Outcome == BoatOutcome.Good));
    }

    /// <summary>Whether there may be a better plan.</summary>
    public static string Proof(ShedPlan plan)
    {
        List<AimResult> open = [.. plan.Aims.Concat(plan.ShoppingAims).Where(aim => !aim.IsProven)];
        return open.Count == 0
            ? "Proven: of all plans with these parts this one brings most boats clear of their floors, then most inside their standard; "
                + "of those it comes nearest to what the gates are meant to be, then takes fewest parts, then least time."
            : "The search ended at its limit, so a better plan may exist: " + string.Join("; ", open.Select(Open)) + ".";
    }

    private static bool IsLeft(PlannedBoat boat) => boat.Outcome == BoatOutcome.Left;

    private static IReadOnlyList<string> Names(ShedPlan plan, Func<PlannedBoat, bool> which) =>
        [.. plan.Boats.Where(which).Select(boat => English.Boats.Name(boat.Check))];

    private static string Open(AimResult aim) =>
        string.Create(CultureInfo.InvariantCulture, $"{Name(aim.Name)} {aim.Value}, {aim.Bound} not ruled out");

    private static string Name(string aim) => aim switch
    {
        AimNames.AboveFloors => "boats clear of their floors",
        AimNames.Inside => "boats inside their standard",
        AimNames.Kept => "jobs of today kept",
        AimNames.Bought => "parts bought",
        AimNames.Deviation => "squared steps of the gauge from what gates are meant to be",
        AimNames.Parts => "parts used",
        AimNames.Minutes => "minutes",
        _ => "jobs that make up for a cause",
    };
}
