using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Changing;

/// <summary>
/// The rig that a crew wants: the targets of class and crew, those of the boat before them; of the pitch abeam what the boat's standard
/// allows. Riggers stay where they are, and pins are asked for nothing but what the pitch needs.
/// </summary>
public static class CrewRig
{
    /// <summary>The rig.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="rig">The boat's rig today, for its gates and its class.</param>
    /// <param name="targets">The targets of class and crew.</param>
    /// <param name="standard">What the boat's pitch is judged by.</param>
    public static TargetRig Of(string name, RigOfBoat rig, RigTargets targets, Standard standard)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(targets);
        ArgumentNullException.ThrowIfNull(standard);
        var aims = new List<RigAim>();
        foreach (RigItem item in RigItems.All)
        {
            if (!TargetRig.IsAimed(item) || item.Measure() is not { } measure)
            {
                continue;
            }

            foreach (RigPlace place in rig.Places(item))
            {
                if (measure.IsOf(rig.Class.Rowing) && targets.Find(measure, RigAspect.Value, place) is { } target)
                {
                    aims.Add(new(item, place, target.Value, target.Lowest, target.Highest));
                }
            }
        }

        StationLimits limits = standard.At(Station.Abeam);
        (double lowest, double highest) = (limits.Lowest.Degrees, limits.Highest.Degrees);
        foreach (GatePlace gate in rig.Gates)
        {
            aims.Add(new(RigItem.PitchAbeam, new(gate.Seat, gate.Side), (lowest + highest) / 2, lowest, highest));
        }

        return new(name, rig.Gates, aims, [], []);
    }
}
