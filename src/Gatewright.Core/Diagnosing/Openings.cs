using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>Every single cause that a boat's readings could show.</summary>
internal static class Openings
{
    public static List<Opening> Of(LinearModel model)
    {
        var result = new List<Opening>();
        StateLayout layout = model.Layout;
        foreach (GatePlace gate in layout.Gates)
        {
            int at = layout.Gate(gate);
            result.Add(Gate(model, Cause.GatePitch, gate, [at], model.Settings.Spreads.GatePitch));
            result.Add(Gate(model, Cause.PinAft, gate, [at + 1], model.Settings.Spreads.Lean));
            result.Add(Gate(model, Cause.PinOut, gate, [at + 2], model.Settings.Spreads.Lean));
            result.Add(Gate(model, Cause.Rigger, gate, [at + 1, at + 2], model.Settings.Spreads.Lean));
        }

        foreach (GatePlace oar in layout.Oars)
        {
            result.Add(Gate(model, Cause.Sleeve, oar, [layout.Sleeve(oar)], model.Settings.Spreads.Sleeve));
        }

        int[] levels = [.. Enumerable.Range(layout.FirstShared, 2 * layout.Shared.Lies.Count)];
        result.Add(Make(model, new(Cause.HullLevel), levels, model.Settings.Spreads.Level));
        for (int gauge = 0; gauge < layout.Shared.Gauges.Count; gauge++)
        {
            var part = new CausePart(Cause.GaugeZero, Gauge: layout.Shared.Gauges[gauge].Name);
            result.Add(Make(model, part, [layout.Gauge(gauge)], model.Settings.Spreads.GaugeZero));
        }

        return result;
    }

    private static Opening Gate(LinearModel model, Cause cause, GatePlace gate, int[] unknowns, Angle spread) =>
        Make(model, new(cause, gate), unknowns, spread);

    private static Opening Make(LinearModel model, CausePart part, int[] unknowns, Angle spread)
    {
        double[] variances = new double[unknowns.Length];
        Array.Fill(variances, spread.Degrees * spread.Degrees);
        return new(part, unknowns, variances, model.Settings.Chances.LogOdds(part.Cause));
    }
}
