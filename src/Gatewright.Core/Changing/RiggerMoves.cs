using Gatewright.Core.Mending.Options;

namespace Gatewright.Core.Changing;

/// <summary>
/// Which rigger goes to which gate, so that the riggers moved and the settings left to make are as few as they can be, exactly: of
/// equal sums that of fewest riggers moved.
/// </summary>
internal sealed class RiggerMoves
{
    private const long Forbidden = 1_000_000_000;
    private const long Fetch = 10_000_000;
    private const long Step = 1000;

    private readonly RigOfBoat _rig;
    private readonly TargetRig _target;
    private readonly ChangeSettings _settings;
    private readonly PartSizes _sizes;
    private readonly bool _isBySeat;

    private RiggerMoves(RigOfBoat rig, TargetRig target, ChangeSettings settings, PartSizes sizes)
    {
        (_rig, _target, _settings, _sizes) = (rig, target, settings, sizes);

        // A span is of two riggers: where riggers may go anywhere, the two of a seat go together, so that it goes with them.
        _isBySeat = rig.Class.Rowing == Rowing.Scull && settings.MayExchangeRiggers && target.Riggers.Count == 0;
    }

    /// <summary>The gate that the rigger now at each of the target's gates comes from; null for one that comes from elsewhere.</summary>
    public static IReadOnlyDictionary<GatePlace, GatePlace?> Of(RigOfBoat rig, TargetRig target, ChangeSettings settings, PartSizes sizes)
    {
        var moves = new RiggerMoves(rig, target, settings, sizes);
        GatePlace[][] from = moves.Units(rig.Gates);
        GatePlace[][] to = moves.Units(target.Gates);
        int size = from.Length + to.Length;
        long[][] cost = new long[size][];
        for (int row = 0; row < size; row++)
        {
            cost[row] = new long[size];
            for (int column = 0; column < size; column++)
            {
                cost[row][column] = (row < from.Length, column < to.Length) switch
                {
                    (true, true) => moves.Cost(from[row], to[column]),
                    (false, true) => Fetch,
                    (true, false) => Fetch,
                    _ => 0,
                };
            }
        }

        int[] columns = LeastAssignment.Of(cost);
        var found = new Dictionary<GatePlace, GatePlace?>();
        for (int row = 0; row < size; row++)
        {
            if (columns[row] < to.Length)
            {
                GatePlace[] place = to[columns[row]];
                for (int i = 0; i < place.Length; i++)
                {
                    found[place[i]] = row < from.Length ? from[row][i] : null;
                }
            }
        }

        return found;
    }

    private GatePlace[][] Units(IReadOnlyList<GatePlace> gates)
    {
        var units = new List<GatePlace[]>();
        foreach (GatePlace gate in gates)
        {
            if (_isBySeat && units.Count > 0 && units[^1][0].Seat == gate.Seat)
            {
                units[^1] = [units[^1][0], gate];
            }
            else
            {
                units.Add([gate]);
            }
        }

        return [.. units];
    }

    private long Cost(GatePlace[] from, GatePlace[] to)
    {
        long moved = 0;
        for (int i = 0; i < from.Length; i++)
        {
            if (!MayGo(from[i], to[i]))
            {
                return Forbidden;
            }

            moved += from[i] == to[i] ? 0 : 1;
        }

        // The shelf is left as it is while costs are weighed: how many steps there are does not hang on what lies there.
        var setting = new PlaceSetting(_target, _rig.Class.Rowing, _settings, _sizes, new(null));
        var carried = new CarriedRig(_rig, _settings);
        for (int i = 0; i < from.Length; i++)
        {
            carried.SetGate(setting, from[i], to[i]);
        }

        if (_rig.Class.Rowing == Rowing.Sweep || _isBySeat)
        {
            carried.SetWidth(setting, from[0].Seat, to[0].Seat);
        }

        int unknown = moved == 0 ? 0 : setting.Unclear.Count;
        return (Step * (moved + setting.Steps.Count + unknown)) + moved;
    }

    private bool MayGo(GatePlace from, GatePlace to)
    {
        if (from.Side != to.Side)
        {
            return false;
        }

        string? mark = _rig.Rigger(from);
        if (RigOfBoat.Marked(_target.Riggers, to) is { } wanted)
        {
            return mark == wanted;
        }

        // A rigger that is wanted elsewhere does not stay, nor does one that belongs to the other side's new seat.
        if (mark is not null && _target.Riggers.Any(r => r.Mark == mark))
        {
            return false;
        }

        return from == to || _settings.MayExchangeRiggers || !_target.Gates.Contains(from) || !_rig.Gates.Contains(to) || IsDisplaced(from) || IsDisplaced(to);
    }

    /// <summary>Whether the target names another rigger for a gate, so that the one there has to go somewhere.</summary>
    private bool IsDisplaced(GatePlace gate) =>
        (RigOfBoat.Marked(_target.Riggers, gate) is { } wanted && wanted != _rig.Rigger(gate))
        || (_rig.Rigger(gate) is { } mark && _target.Riggers.Any(r => r.Mark == mark && r.At != gate));
}
