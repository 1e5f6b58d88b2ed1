using Gatewright.Cli.CheckShed;
using Gatewright.Core.Mending;
using Gatewright.Planning;

namespace Gatewright.Cli.Mend;

/// <summary>A shed and the plan for it.</summary>
/// <param name="Check">The boats as they are.</param>
/// <param name="Stores">What lies on the shelf; null when nobody said.</param>
/// <param name="Plan">The plan.</param>
internal sealed record ShedMend(ShedCheck Check, Stores? Stores, ShedPlan Plan)
{
    /// <summary>Whether any boat is not good.</summary>
    public bool NeedsAttention => Check.NeedsAttention;

    /// <summary>Checks the boats and plans for them.</summary>
    public static ShedMend Of(MendInput input)
    {
        ShedCheck check = ShedCheck.Of(input.Shed);
        IEnumerable<ShedBoat> boats = check.Boats.Select(boat =>
            new ShedBoat(boat, input.Backstays.Contains(boat.Readings.Boat)));
        return new(check, input.Stores, new Planner(PlanSettings.Default).Plan(boats, input.Stores ?? Stores.Empty));
    }
}
