using Gatewright.Core.Mending;
using Gatewright.Planning;

namespace Gatewright.Cli.Mend.Words;

/// <summary>What to take along and what to buy, each part with the boats that want it.</summary>
internal static class ListWords
{
    /// <summary>Under a plan that was made without a word about the shelf.</summary>
    public const string NoStores = "Nothing was said of the shelf, so it counts as bare: --stores FILE.csv says what lies there.";

    /// <summary>The parts for today, with the boats they go to.</summary>
    public static IEnumerable<(PartCount Part, string Boats)> TakeAlong(ShedPlan plan) =>
        plan.Parts.Select(part => (part, Boats(plan, part.Part, boat => boat.Jobs)));

    /// <summary>The parts to buy, with the boats that wait for that part.</summary>
    public static IEnumerable<(PartCount Part, string Boats)> ToBuy(ShedPlan plan) =>
        plan.Shopping.Select(part => (part, Boats(plan, part.Part, boat => boat.AfterBuying)));

    private static string Boats(ShedPlan plan, Part part, Func<PlannedBoat, IEnumerable<MendingJob>> jobs) => string.Join(
        ", ",
        plan.Boats.Where(boat => jobs(boat).Any(job => job.Option.Parts.Contains(part))).Select(boat => boat.Check.Readings.Boat));
}
