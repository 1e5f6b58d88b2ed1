using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// Riggers that may stand on another's place: asked about only where riggers were told to have been off and refitted.
/// </summary>
/// <remarks>
/// Where the leans of both are known from before, two exchanged riggers bring each other's: on the same side as they
/// were, on the other side with fore and aft exchanged, since a rigger goes across the boat by being turned end for
/// end. One alone, turned end for end on its own place, leans forward by what it leaned aft. Where nothing is known from
/// before, an exchange leaves the leans of both open together.
/// </remarks>
internal static class WrongSeats
{
    public static IEnumerable<Opening> Of(LinearModel model)
    {
        List<GatePlace> refitted = [.. model.Context.Reports
            .Where(r => r.Kind == ReportKind.Refitted)
            .Select(r => r.Gate)
            .OfType<GatePlace>()
            .Where(model.Layout.Gates.Contains)
            .Distinct()
            .Order()];
        for (int i = 0; i < refitted.Count; i++)
        {
            if (model.Context.LastGood.TryGetValue(refitted[i], out PinLean lean))
            {
                yield return Moved(model, new(Cause.WrongSeat, refitted[i]), [(refitted[i], Across(lean))]);
            }

            for (int j = 0; j < i; j++)
            {
                yield return Exchanged(model, refitted[j], refitted[i]);
            }
        }
    }

    private static Opening Exchanged(LinearModel model, GatePlace one, GatePlace other)
    {
        var part = new CausePart(Cause.WrongSeat, one, other);
        if (!model.Context.LastGood.TryGetValue(one, out PinLean first)
            || !model.Context.LastGood.TryGetValue(other, out PinLean second))
        {
            return Openings.Wide(model, part, [.. Leans(model, one), .. Leans(model, other)], model.Settings.Spreads.Lean);
        }

        bool across = one.Side != other.Side;
        return Moved(model, part,
        [
            (one, across ? Across(second) : second),
            (other, across ? Across(first) : first),
        ]);
    }

    private static Opening Moved(LinearModel model, CausePart part, List<(GatePlace Gate, PinLean To)> moves)
    {
        var unknowns = new List<int>();
        var shifts = new List<double>();
        foreach ((GatePlace gate, PinLean to) in moves)
        {
            int[] leans = Leans(model, gate);
            unknowns.AddRange(leans);
            shifts.Add(to.Aft.Degrees - model.Means[leans[0]]);
            shifts.Add(to.Out.Degrees - model.Means[leans[1]]);
        }

        // A rigger put on anew sits a little differently even on its own place: as much again as healthy pins scatter.
        double[] spreads = new double[unknowns.Count];
        Array.Fill(spreads, model.Settings.Spreads.HealthyLean.Degrees);
        return new(part, [.. unknowns], spreads, [.. shifts], model.Settings.Chances.LogOdds(Cause.WrongSeat));
    }

    private static PinLean Across(PinLean lean) => PinLean.FromDegrees(-lean.Aft.Degrees, lean.Out.Degrees);

    private static int[] Leans(LinearModel model, GatePlace gate) =>
        [model.Layout.Gate(gate) + 1, model.Layout.Gate(gate) + 2];
}
