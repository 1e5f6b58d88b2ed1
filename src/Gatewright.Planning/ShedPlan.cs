using Gatewright.Core.Mending;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning;

/// <summary>
/// Who gets which part: a plan for all boats of a shed at once, and what to buy for those it leaves.
/// </summary>
/// <remarks>
/// Best in this order: most boats with no floor in doubt; of those plans, most boats wholly inside their standard; least
/// deviation; fewest parts; least time; fewest jobs that make up for a cause elsewhere. The shopping list is worked out
/// for the boats that are not inside then, with what is left on the shelf: as many of them above their floors and inside
/// as any parts can bring there, with as many of today's jobs kept as can be, and then with the fewest parts bought.
/// </remarks>
/// <param name="Boats">Every boat: by its verdict, the worst first, then by what comes of it, the best first, then by name.</param>
/// <param name="Shopping">What to buy.</param>
/// <param name="Aims">How well each aim was met, and whether it is proven that none is better.</param>
/// <param name="ShoppingAims">The same of the plan after buying; empty when nothing is left to mend.</param>
public sealed record ShedPlan(
    IReadOnlyList<PlannedBoat> Boats,
    IReadOnlyList<PartCount> Shopping,
    IReadOnlyList<AimResult> Aims,
    IReadOnlyList<AimResult> ShoppingAims)
{
    /// <summary>The parts to take along from the shelf.</summary>
    public IReadOnlyList<PartCount> Parts => PartCount.Of(Boats.SelectMany(b => b.Jobs).SelectMany(j => j.Option.Parts));

    /// <summary>How long all jobs of today take, roughly.</summary>
    public int Minutes => Boats.Sum(b => b.Minutes);

    /// <summary>How many boats come out so.</summary>
    public int Count(BoatOutcome outcome) => Boats.Count(b => b.Outcome == outcome);

    /// <summary>Whether it is proven that no plan is better; when not, the solver's limit was reached first.</summary>
    public bool IsProven => Aims.Concat(ShoppingAims).All(a => a.IsProven);
}
