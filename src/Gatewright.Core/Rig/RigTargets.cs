namespace Gatewright.Core.Rig;

/// <summary>The targets of a boat's rig. Those of pitch and of the pins' leans are the standard's and the gate's, not these.</summary>
public sealed class RigTargets
{
    private readonly RigTarget[] _all;

    private RigTargets(BoatClass boatClass, Crew? crew, RigTarget[] all) => (Class, Crew, _all) = (boatClass, crew, all);

    /// <summary>The class.</summary>
    public BoatClass Class { get; }

    /// <summary>Who rows it; null where nobody has said.</summary>
    public Crew? Crew { get; }

    /// <summary>All of them.</summary>
    public IReadOnlyList<RigTarget> All => _all;

    /// <summary>
    /// What a boat of a class is set to before its club says otherwise. Of a crew that nobody has told, wide enough for
    /// women and men alike.
    /// </summary>
    public static RigTargets Starting(BoatClass boatClass, Crew? crew)
    {
        ArgumentNullException.ThrowIfNull(boatClass);
        return new(boatClass, crew, crew is { } known
            ? StartingTargets.Of(boatClass, known)
            : Joined(StartingTargets.Of(boatClass, Rig.Crew.Women), StartingTargets.Of(boatClass, Rig.Crew.Men)));
    }

    /// <summary>These with one more, in place of the one of its source that is of the same.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The value of a measure that none can be: gearing and arc follow from these, and an oar no longer than its inboard has neither.
    /// </exception>
    public RigTargets With(RigTarget target)
    {
        ArgumentNullException.ThrowIfNull(target);
        if (target.Aspect == RigAspect.Value && !target.Measure.CanBe(target.Value))
        {
            (double least, double most) = target.Measure.Plausible();
            throw new ArgumentOutOfRangeException(nameof(target), target.Value, FormattableString.Invariant($"A target of {target.Measure.Word()} must be {least} to {most}."));
        }

        return new(Class, Crew, [.. Array.FindAll(_all, t => t.Source != target.Source || !t.IsOfTheSame(target)), target]);
    }

    /// <summary>
    /// The target of a measure at a place: the boat's own before the club's for the class, that before the starting one; of
    /// each the nearest, of that seat and side, else of the seat, else of the side, else of every place. Null where there is
    /// none.
    /// </summary>
    public RigTarget? Find(RigMeasure measure, RigAspect aspect, RigPlace place)
    {
        RigTarget? best = null;
        foreach (RigTarget target in _all)
        {
            bool isOfIt = target.Measure == measure && target.Aspect == aspect
                && (target.Seat is null || target.Seat == place.Seat)
                && (target.Side is null || target.Side == place.Side);
            if (isOfIt && (best is null || Nearness(target) > Nearness(best)))
            {
                best = target;
            }
        }

        return best;
    }

    private static int Nearness(RigTarget target) =>
        (target.Source switch { RigSource.Boat => 8, RigSource.Club => 4, _ => 0 })
        + (target.Seat is null ? 0 : 2) + (target.Side is null ? 0 : 1);

    private static RigTarget[] Joined(RigTarget[] one, RigTarget[] other) => Array.ConvertAll(one, t =>
    {
        RigTarget also = Array.Find(other, o => o.IsOfTheSame(t))!;
        (double lowest, double highest) = (Math.Min(t.Lowest, also.Lowest), Math.Max(t.Highest, also.Highest));
        return t with { Value = (lowest + highest) / 2, Tolerance = (highest - lowest) / 2 };
    });
}
