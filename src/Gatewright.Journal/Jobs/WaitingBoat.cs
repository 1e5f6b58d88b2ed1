using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>A boat with gates that are not good and on which no job is open.</summary>
/// <param name="Boat">How the boat stands.</param>
/// <param name="Gates">Those gates, the worst first.</param>
public sealed record WaitingBoat(BoatStanding Boat, IReadOnlyList<GateVerdict> Gates)
{
    /// <summary>What of a boat waits to be planned; null where nothing does.</summary>
    /// <remarks>By the verdict alone: whether a remedy is worth while takes the diagnosis, which is asked for where one is chosen.</remarks>
    public static WaitingBoat? Of(BoatStanding boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        if (boat.Check is null || boat.IsOutOfUse)
        {
            return null;
        }

        List<JobView> jobs = [.. boat.View.Jobs.Where(j => j.IsOpen)];
        HashSet<GatePlace> open = [.. jobs.SelectMany(j => j.Gates)];
        IReadOnlyList<GateVerdict> gates = jobs.Exists(j => j.Gate is null)
            ? []
            : [.. boat.Check.Verdict.Gates
                .Where(g => g.Verdict != Verdict.Good && !open.Contains(g.Gate))
                .OrderByDescending(g => g.Verdict)
                .ThenBy(g => g.Gate)];
        return gates.Count == 0 ? null : new(boat, gates);
    }

    /// <summary>Boats in the order in which they are seen to: those to stay ashore first, the worst verdict, by name.</summary>
    public static IReadOnlyList<WaitingBoat> InOrder(IEnumerable<BoatStanding> boats)
    {
        ArgumentNullException.ThrowIfNull(boats);
        return [.. boats.Select(Of)
            .OfType<WaitingBoat>()
            .OrderByDescending(w => w.Boat.Urgency)
            .ThenBy(w => w.Boat.View.Name, StringComparer.OrdinalIgnoreCase)];
    }
}
