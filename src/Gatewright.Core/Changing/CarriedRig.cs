using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>What a rig is once its riggers are at their new gates: what goes with a rigger is known a little worse for having been off.</summary>
internal sealed class CarriedRig(RigOfBoat rig, ChangeSettings settings)
{
    /// <summary>Height, pin and insert at a gate.</summary>
    /// <param name="setting">Where the steps go.</param>
    /// <param name="from">Where the rigger comes from; null for one from elsewhere, of which nothing is known.</param>
    /// <param name="to">The gate.</param>
    public void SetGate(PlaceSetting setting, GatePlace? from, GatePlace to)
    {
        var place = new RigPlace(to.Seat, to.Side);
        setting.Measure(RigItem.Height, place, Now(RigItem.Height, from, to));
        double? insert = from is { } known && rig.Inserts.TryGetValue(known, out double stamp) ? stamp : null;
        setting.Gate(place, new(item => Now(item, from, to), item => Known(item, from), insert, to));
    }

    /// <summary>Spread or span at a seat, whose riggers come from one seat; null where they do not, and then it is not known.</summary>
    public void SetWidth(PlaceSetting setting, int? from, int to)
    {
        RigItem item = rig.Class.Rowing == Rowing.Sweep ? RigItem.Spread : RigItem.Span;
        RigEstimate? now = from is { } seat ? rig.Find(item, new(seat, null))?.Value : null;
        setting.Measure(item, new(to, null), now is { } value && from != to ? Refitted(item, value) : now);
    }

    private RigEstimate? Now(RigItem item, GatePlace? from, GatePlace to) =>
        from is not { } gate || Known(item, gate)?.Value is not { } value ? null
        : gate == to || item == RigItem.GatePitch ? value
        : Refitted(item, value);

    private RigValue? Known(RigItem item, GatePlace? from) => from is { } gate ? rig.Find(item, new(gate.Seat, gate.Side)) : null;

    private RigEstimate Refitted(RigItem item, RigEstimate value)
    {
        double u = item.IsAngle() ? settings.Mending.NewPinU.Degrees : settings.RefitCentimetres;
        return value with { U = Math.Sqrt((value.U * value.U) + (u * u)) };
    }
}
