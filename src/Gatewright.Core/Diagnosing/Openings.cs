using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>Every single cause that a boat's readings could show.</summary>
internal static class Openings
{
    public static List<Opening> Of(LinearModel model)
    {
        StateLayout layout = model.Layout;
        Spreads spreads = model.Settings.Spreads;
        var result = new List<Opening>();
        foreach (GatePlace gate in layout.Gates)
        {
            int at = layout.Gate(gate);
            result.Add(Wide(model, new(Cause.GatePitch, gate), [at], spreads.GatePitch));
            result.Add(Wide(model, new(Cause.PinAft, gate), [at + 1], spreads.Lean));
            result.Add(Wide(model, new(Cause.PinOut, gate), [at + 2], spreads.Lean));
            result.Add(Wide(model, new(Cause.Rigger, gate), [at + 1, at + 2], spreads.Lean));
        }

        foreach (GatePlace oar in layout.Oars)
        {
            result.Add(Wide(model, new(Cause.Sleeve, oar), [layout.Sleeve(oar)!.Value], spreads.Sleeve));
        }

        int[] levels = [.. Enumerable.Range(layout.FirstShared, 2 * layout.Shared.Lies.Count)];
        result.Add(Wide(model, new(Cause.HullLevel), levels, spreads.Level));
        for (int gauge = 0; gauge < layout.Shared.Gauges.Count; gauge++)
        {
            var part = new CausePart(Cause.GaugeZero, Gauge: layout.Shared.Gauges[gauge].Name);
            result.Add(Wide(model, part, [layout.Gauge(gauge)], spreads.GaugeZero));
        }

        result.AddRange(WrongSeats.Of(model));
        return result;
    }

    /// <summary>A cause that throws each of its unknowns by one spread, in no direction it could name.</summary>
    public static Opening Wide(LinearModel model, CausePart part, int[] unknowns, Angle spread)
    {
        double[] spreads = new double[unknowns.Length];
        Array.Fill(spreads, spread.Degrees);
        return new(part, unknowns, spreads, [], model.Settings.Chances.LogOdds(part.Cause));
    }
}
