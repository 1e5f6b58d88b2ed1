using Gatewright.Cli.Drawing;
using Gatewright.Planning;

namespace Gatewright.Cli.Mend.ForPeople;

/// <summary>The plan for a person who sees: boats with something to do, the most urgent first, then the lists.</summary>
internal static class MendPage
{
    /// <summary>The columns the page cannot do with less of.</summary>
    public const int LeastWidth = 60;

    public static Page Of(ShedMend shed, int width)
    {
        var page = new Page(width);
        foreach (PlannedBoat boat in shed.Plan.Boats.Where(boat => boat.Outcome != BoatOutcome.Good))
        {
            BoatSection.Write(page, boat);
        }

        ListsSection.Write(page, shed);
        ShedSection.Write(page, shed);
        return page;
    }
}
