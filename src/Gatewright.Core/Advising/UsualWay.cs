using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>How most readings of a boat were taken: a further one is taken so, too.</summary>
/// <param name="Lie">The lying.</param>
/// <param name="Gauge">The gauge.</param>
internal sealed record UsualWay(BoatLie Lie, Gauge Gauge)
{
    /// <summary>Of several as common the latest, then by name, so that the order of the readings decides nothing.</summary>
    public static UsualWay Of(BoatReadings boat) => new(
        boat.Readings.GroupBy(r => r.Lie)
            .OrderByDescending(g => g.Count())
            .ThenByDescending(g => g.Key.Date)
            .ThenBy(g => g.Key.ToString(), StringComparer.Ordinal)
            .First().Key,
        boat.Readings.GroupBy(r => r.Gauge)
            .OrderByDescending(g => g.Count())
            .ThenByDescending(g => g.Max(r => r.Lie.Date))
            .ThenBy(g => g.Key.Name, StringComparer.Ordinal)
            .First().Key);
}
