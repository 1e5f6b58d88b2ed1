using Gatewright.Core.Mending;

namespace Gatewright.Core.Changing;

/// <summary>Riggers and oars that change their places.</summary>
internal static class MoveSteps
{
    /// <summary>
    /// Riggers, ring by ring: those that take each other's places come off together, and the next ring after them, so that no more
    /// are off at once than must be.
    /// </summary>
    public static List<ChangeStep> Riggers(RigOfBoat rig, TargetRig target, IReadOnlyDictionary<GatePlace, GatePlace?> from)
    {
        var steps = new List<ChangeStep>();
        var done = new HashSet<GatePlace>();
        foreach (GatePlace start in from.Keys.Order())
        {
            for (GatePlace? to = start; to is { } gate && from.TryGetValue(gate, out GatePlace? source) && source != gate && done.Add(gate); to = source)
            {
                steps.Add(Step(ChangePhase.Riggers, source, gate, source is { } at ? rig.Rigger(at) : RigOfBoat.Marked(target.Riggers, gate)) with
                {
                    ReadAgain = ReadAgainAfter.OfRigger(rig.Class.Rowing),
                });
            }
        }

        foreach (GatePlace gate in rig.Gates)
        {
            if (!from.Values.Contains(gate))
            {
                steps.Add(Step(ChangePhase.Riggers, gate, null, rig.Rigger(gate)));
            }
        }

        return steps;
    }

    /// <summary>
    /// The gate where the oar for each gate is now: its own unless the target names another; null where it comes from elsewhere. Rigged
    /// on the other side a sweep seat keeps no oar.
    /// </summary>
    public static IReadOnlyDictionary<GatePlace, GatePlace?> OarsFrom(RigOfBoat rig, TargetRig target)
    {
        var from = new Dictionary<GatePlace, GatePlace?>();
        foreach (GatePlace gate in target.Gates)
        {
            string? wanted = RigOfBoat.Marked(target.Oars, gate);
            GatePlace? at = rig.Gates.Contains(gate) ? gate : null;
            if (wanted is not null && wanted != rig.Oar(gate))
            {
                at = null;
                foreach (RigMark oar in rig.Oars)
                {
                    at = oar.Mark == wanted ? oar.At : at;
                }
            }

            from[gate] = at;
        }

        return from;
    }

    /// <summary>Oars that the target names for other gates.</summary>
    public static List<ChangeStep> Oars(RigOfBoat rig, TargetRig target, IReadOnlyDictionary<GatePlace, GatePlace?> from)
    {
        var steps = new List<ChangeStep>();
        foreach (RigMark oar in target.Oars)
        {
            if (from.TryGetValue(oar.At, out GatePlace? at) && rig.Oar(oar.At) != oar.Mark)
            {
                steps.Add(Step(ChangePhase.Oars, at, oar.At, oar.Mark) with { ReadAgain = at is null ? [RigItem.OarLength, RigItem.Inboard] : [] });
            }
        }

        return steps;
    }

    private static ChangeStep Step(ChangePhase phase, GatePlace? from, GatePlace? to, string? mark)
    {
        GatePlace at = to ?? from!.Value;
        return new(phase, new(at.Seat, at.Side))
        {
            From = from,
            To = to,
            Mark = mark,
            Cautions = phase == ChangePhase.Riggers ? [Caution.Bolts, Caution.Defer] : [Caution.Defer],
        };
    }
}
