using Gatewright.Core;

namespace Gatewright.Journal.Rounds;

/// <summary>In which order a boat's gates are read.</summary>
/// <remarks>
/// One walk round the boat a station: down the port side from the bow, and back along starboard from the stern, so that
/// whoever reads ends where the next station begins and never ducks under the hull.
/// </remarks>
public static class RoundOrder
{
    /// <summary>The steps at some stations, all of one station before the next, in the order of the stroke.</summary>
    public static IReadOnlyList<ReadingStep> Of(IReadOnlyList<GatePlace> gates, IEnumerable<Station> stations)
    {
        ArgumentNullException.ThrowIfNull(gates);
        HashSet<Station> chosen = [.. stations];
        GatePlace[] walk =
        [
            .. gates.Where(g => g.Side == Side.Port).Order(),
            .. gates.Where(g => g.Side == Side.Starboard).OrderDescending(),
        ];
        return [.. from station in Stations.All where chosen.Contains(station) from gate in walk select ReadingStep.Face(gate, station)];
    }
}
