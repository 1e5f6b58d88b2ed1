using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Changing;

/// <summary>What spread or span, oar length and inboard make of overlap and gearing, step by step.</summary>
internal static class WidthEffects
{
    public static void Add(
        RigOfBoat rig, ChangeStep[] steps, IReadOnlyDictionary<GatePlace, GatePlace?> oars, IReadOnlyDictionary<GatePlace, GatePlace?> riggers)
    {
        bool isScull = rig.Class.Rowing == Rowing.Scull;
        var now = new Dictionary<(RigItem, int, Side?), double>();
        foreach ((GatePlace to, GatePlace? from) in oars)
        {
            foreach (RigItem item in (ReadOnlySpan<RigItem>)[RigItem.Inboard, RigItem.OarLength])
            {
                if (from is { } at && rig.Find(item, new(at.Seat, at.Side)) is { } value)
                {
                    now[(item, to.Seat, to.Side)] = value.Value.Value;
                }
            }
        }

        RigItem width = isScull ? RigItem.Span : RigItem.Spread;
        foreach ((GatePlace to, GatePlace? from) in riggers)
        {
            if (from is { } at && rig.Find(width, new(at.Seat, null)) is { } value)
            {
                now[(width, to.Seat, null)] = value.Value.Value;
            }
        }

        for (int i = 0; i < steps.Length; i++)
        {
            ChangeStep step = steps[i];
            if (step.Item is not { } item || step.After is not { } after
                || !(item == width || item == RigItem.Inboard || item == RigItem.OarLength))
            {
                continue;
            }

            List<(EffectOf Of, double Value)> before = Of(now, step.Place.Seat, width);
            (RigItem, int, Side?) key = (item, step.Place.Seat, item.HasSide() ? step.Place.Side : null);

            // The collar goes along with a handle that is set longer.
            (RigItem, int, Side?) collar = (RigItem.Inboard, step.Place.Seat, step.Place.Side);
            if (item == RigItem.OarLength && now.TryGetValue(collar, out double inboard) && step.Before is { } was)
            {
                now[collar] = inboard + after.Value - was.Value;
            }

            now[key] = after.Value;
            var effects = new List<ChangeEffect>(step.Effects);
            foreach ((EffectOf of, double value) in Of(now, step.Place.Seat, width))
            {
                foreach ((EffectOf sameOf, double old) in before)
                {
                    if (sameOf == of && Math.Abs(value - old) > 1e-9)
                    {
                        effects.Add(new(of, new(step.Place.Seat, null), old, value));
                    }
                }
            }

            steps[i] = step with { Effects = effects };
        }
    }

    /// <summary>
    /// Overlap and gearing of a seat; a sculler's outboard is the mean of the two sides.
    /// </summary>
    private static List<(EffectOf Of, double Value)> Of(Dictionary<(RigItem, int, Side?), double> now, int seat, RigItem width)
    {
        var effects = new List<(EffectOf, double)>();
        double inboards = 0;
        double outboards = 0;
        int oars = 0;
        int lengths = 0;
        foreach (Side side in (ReadOnlySpan<Side>)[Side.Port, Side.Starboard])
        {
            if (now.TryGetValue((RigItem.Inboard, seat, side), out double inboard))
            {
                inboards += inboard;
                oars++;
                if (now.TryGetValue((RigItem.OarLength, seat, side), out double length))
                {
                    outboards += length - inboard;
                    lengths++;
                }
            }
        }

        bool isScull = width == RigItem.Span;
        int whole = isScull ? 2 : 1;
        if (now.TryGetValue((width, seat, null), out double across) && oars == whole)
        {
            effects.Add((EffectOf.Overlap, isScull ? Overlap.OfScull(inboards, across) : Overlap.OfSweep(inboards, across)));
            if (lengths == whole && across > 0)
            {
                Length outboard = Length.FromCentimetres(outboards / whole);
                effects.Add((EffectOf.Gearing, Gearing.Of(isScull ? Rowing.Scull : Rowing.Sweep, outboard, Length.FromCentimetres(across))));
            }
        }

        return effects;
    }
}
