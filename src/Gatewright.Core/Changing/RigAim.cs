using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>What an item is to be at a place, in centimetres or degrees.</summary>
/// <param name="Item">Which.</param>
/// <param name="Place">Where.</param>
/// <param name="Value">What to set.</param>
/// <param name="Lowest">The lowest that needs no change.</param>
/// <param name="Highest">The highest that needs no change.</param>
/// <param name="U">How well the aim itself is known: 0 where somebody wrote it down, else the standard uncertainty of the rig it was taken from.</param>
/// <param name="Gauge">The one gauge that rig was read with; null for a measure, or where there were several.</param>
/// <param name="ZeroU">What of <paramref name="U"/> is that gauge's zero.</param>
public sealed record RigAim(
    RigItem Item, RigPlace Place, double Value, double Lowest, double Highest, double U = 0, string? Gauge = null, double ZeroU = 0);

/// <summary>A rig that a boat is to have.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Gates">The gates as they are to be: in sweep the sides may be others than today's.</param>
/// <param name="Aims">What each item is to be; nothing is said of the others.</param>
/// <param name="Riggers">Which rigger is to be where, as far as that matters.</param>
/// <param name="Oars">Which oar is to be where, as far as that matters.</param>
public sealed record TargetRig(
    string Name, IReadOnlyList<GatePlace> Gates, IReadOnlyList<RigAim> Aims, IReadOnlyList<RigMark> Riggers, IReadOnlyList<RigMark> Oars)
{
    /// <summary>
    /// The rig of another boat, or of this one on another day: as good as the same is near enough. Riggers and oars of another boat
    /// stay with that boat.
    /// </summary>
    /// <param name="other">The rig to come to.</param>
    /// <param name="isSameBoat">Whether it is this boat's own.</param>
    public static TargetRig Like(RigOfBoat other, bool isSameBoat)
    {
        ArgumentNullException.ThrowIfNull(other);
        var aims = new List<RigAim>();
        foreach (RigValue value in other.Values)
        {
            // Of pins and gates what they are is aimed at; the pitch at catch and finish follows, as the overlap does.
            if (IsAimed(value.Item))
            {
                double near = value.Item.AsGoodAsSame();
                double aim = value.Value.Value;
                aims.Add(new(value.Item, value.Place, aim, aim - near, aim + near, value.Value.U, value.Gauge, value.ZeroU));
            }
        }

        return new(other.Name, other.Gates, aims, isSameBoat ? other.Riggers : [], isSameBoat ? other.Oars : []);
    }

    /// <summary>
    /// The boat's rig with measures of one seat set to figures that somebody asks for, and all else as it is: of a measure that each oar of a seat has, both. Such an
    /// aim has no tolerance, since the figures were chosen; what lies nearer than can be told is to be measured, not set.
    /// </summary>
    /// <param name="name">What it is called.</param>
    /// <param name="rig">The boat's rig today.</param>
    /// <param name="seat">The seat.</param>
    /// <param name="figures">What each measure is to be, in centimetres or degrees.</param>
    public static TargetRig OfSeat(string name, RigOfBoat rig, int seat, IReadOnlyList<(RigMeasure Measure, double Value)> figures)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(figures);
        var aims = new List<RigAim>();
        foreach ((RigMeasure measure, double value) in figures)
        {
            RigItem item = RigItems.Of(measure);
            foreach (RigPlace place in rig.Places(item))
            {
                if (place.Seat == seat)
                {
                    aims.Add(new(item, place, value, value, value));
                }
            }
        }

        return new(name, rig.Gates, aims, [], []);
    }

    /// <summary>Whether an item is something that is set; the others follow from those that are.</summary>
    public static bool IsAimed(RigItem item) =>
        item is not (RigItem.GatePitch or RigItem.PitchCatch or RigItem.PitchFinish or RigItem.Overlap);

    /// <summary>What is aimed at; null where nothing is. In sweep the aim of the other side holds where this one has none.</summary>
    public RigAim? Find(RigItem item, RigPlace place, Rowing rowing)
    {
        RigAim? ofSeat = null;
        foreach (RigAim aim in Aims)
        {
            if (aim.Item != item || aim.Place.Seat != place.Seat)
            {
                continue;
            }

            if (aim.Place.Side == place.Side)
            {
                return aim;
            }

            ofSeat ??= aim;
        }

        return rowing == Rowing.Sweep ? ofSeat : null;
    }
}
