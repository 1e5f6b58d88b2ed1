using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>
/// Where the unknowns of a gate's view stand: the gate's three, then what the boat shares, then the oar's sleeve if
/// anything is known of it. Shared unknowns stand at the same place in every view.
/// </summary>
internal sealed class ViewLayout(LinearModel model)
{
    private const int OfGate = 3;

    private readonly StateLayout _layout = model.Layout;

    /// <summary>The places in the boat's state of a view's unknowns.</summary>
    public int[] Unknowns(GatePlace gate)
    {
        int first = _layout.Gate(gate);
        IEnumerable<int> own = [first, first + 1, first + 2];
        IEnumerable<int> shared = Enumerable.Range(_layout.FirstShared, _layout.Shared.Variances.Length);
        return _layout.Sleeve(gate) is { } sleeve ? [.. own, .. shared, sleeve] : [.. own, .. shared];
    }

    /// <summary>A reading of the gate, a pin or a sleeve as a sum of the view's unknowns.</summary>
    public double[] Sum(Reading reading)
    {
        double[] line = new double[_layout.Size];
        model.FillRow(reading, line);
        return [.. Unknowns(reading.Gate).Select(i => line[i])];
    }

    /// <summary>Bow high of a lying; port low stands next to it.</summary>
    public int Lie(BoatLie lie) => OfGate + _layout.Lie(_layout.Shared.IndexOf(lie)) - _layout.FirstShared;

    /// <summary>A gauge's zero.</summary>
    public int Gauge(int gauge) => OfGate + _layout.Gauge(gauge) - _layout.FirstShared;
}
