using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.App.Rig;

/// <summary>What of a measure a target is of, and where in the boat.</summary>
/// <param name="Aspect">What of it.</param>
/// <param name="Seat">The seat; null for every one.</param>
/// <param name="Side">The side; null for both.</param>
public sealed record TargetPlace(RigAspect Aspect, int? Seat, Side? Side)
{
    /// <summary>As a place to look a target up by: no seat is 0, which only a target of every seat is of.</summary>
    public RigPlace At => new(Seat ?? 0, Side);

    /// <summary>Whether a target is of just this, and not of more places.</summary>
    public bool IsOf(RigTarget target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return (target.Aspect, target.Seat, target.Side) == (Aspect, Seat, Side);
    }

    /// <summary>Those of every seat: of a sculler's gates and oars side by side, else of both.</summary>
    public static IReadOnlyList<TargetPlace> OfAll(RigMeasure measure, BoatClass boatClass)
    {
        ArgumentNullException.ThrowIfNull(boatClass);
        List<TargetPlace> places = IsSided(measure, boatClass)
            ? [new(RigAspect.Value, null, Core.Side.Port), new(RigAspect.Value, null, Core.Side.Starboard), new(RigAspect.Sides, null, null)]
            : [new(RigAspect.Value, null, null)];
        return boatClass.Seats > 1 ? [.. places, new(RigAspect.Seats, null, null)] : places;
    }

    /// <summary>Those of one seat, one side of it, or the seats of one side; none in a boat of one seat, where that is every one.</summary>
    public static IReadOnlyList<TargetPlace> OfOne(RigMeasure measure, BoatClass boatClass)
    {
        ArgumentNullException.ThrowIfNull(boatClass);
        if (boatClass.Seats == 1)
        {
            return [];
        }

        IEnumerable<int> seats = Enumerable.Range(1, boatClass.Seats);
        return IsSided(measure, boatClass)
            ? [
                .. seats.SelectMany(seat => new TargetPlace[]
                {
                    new(RigAspect.Value, seat, Core.Side.Port), new(RigAspect.Value, seat, Core.Side.Starboard), new(RigAspect.Sides, seat, null),
                }),
                new(RigAspect.Seats, null, Core.Side.Port), new(RigAspect.Seats, null, Core.Side.Starboard),
            ]
            : [.. seats.Select(seat => new TargetPlace(RigAspect.Value, seat, null))];
    }

    private static bool IsSided(RigMeasure measure, BoatClass boatClass) => measure.HasSide() && boatClass.Rowing == Rowing.Scull;
}
