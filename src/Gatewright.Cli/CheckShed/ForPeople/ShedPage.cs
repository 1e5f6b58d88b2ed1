using Gatewright.Cli.Drawing;
using Gatewright.Cli.Rigs;
using Gatewright.Cli.Rigs.ForPeople;
using Gatewright.Core.Checking;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>The report for a person who sees: every boat as the file has them, then the shed.</summary>
internal static class ShedPage
{
    public static Page Of(ShedCheck shed, CheckRequest request, int width)
    {
        var page = new Page(width);
        foreach (BoatCheck boat in shed.Boats)
        {
            BoatSection.Write(page, boat, request);
        }

        foreach (ShedRig rig in shed.Rigs)
        {
            RigSection.Write(page, rig);
        }

        ShedSection.Write(page, shed);
        return page;
    }
}
