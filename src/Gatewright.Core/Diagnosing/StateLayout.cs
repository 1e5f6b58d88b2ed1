using Gatewright.Core.Measuring;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// Where each unknown of a boat stands in the state of the linear model: three a gate, two a lying, one a gauge,
/// one an oar that was read, or whose blade was reported.
/// </summary>
internal sealed class StateLayout
{
    private readonly int _firstLie;
    private readonly int _firstGauge;
    private readonly int _firstSleeve;

    public StateLayout(BoatReadings boat, BoatContext context, SharedErrors shared)
    {
        IReadOnlyList<Reading> readings = boat.Readings;
        Rowing = boat.Class.Rowing;
        Shared = shared;
        Gates = [.. readings.Where(r => r.Item != ReadItem.Sleeve).Select(r => r.Gate).Distinct().Order()];
        Oars = [.. readings.Where(r => r.Item == ReadItem.Sleeve).Select(r => r.Gate)
            .Concat(context.Reports.Where(r => r.Kind.IsOfTheBlade()).Select(r => r.Gate).OfType<GatePlace>())
            .Distinct()
            .Order()];
        _firstLie = 3 * Gates.Count;
        _firstGauge = _firstLie + (2 * shared.Lies.Count);
        _firstSleeve = _firstGauge + shared.Gauges.Count;
        Size = _firstSleeve + Oars.Count;
    }

    public Rowing Rowing { get; }

    public SharedErrors Shared { get; }

    public List<GatePlace> Gates { get; }

    public List<GatePlace> Oars { get; }

    public int Size { get; }

    /// <summary>The gate's pitch; its lean aft and its lean out follow.</summary>
    public int Gate(GatePlace gate) => 3 * Gates.BinarySearch(gate);

    /// <summary>Bow high; port low follows. Gauges' zeros follow the last lying.</summary>
    public int Lie(int lie) => _firstLie + (2 * lie);

    public int Gauge(int gauge) => _firstGauge + gauge;

    /// <summary>The oar's sleeve error, or null when nothing was read or told of the oar.</summary>
    public int? Sleeve(GatePlace oar) =>
        Oars.BinarySearch(oar) is >= 0 and int place ? _firstSleeve + place : null;

    public int FirstShared => _firstLie;
}
