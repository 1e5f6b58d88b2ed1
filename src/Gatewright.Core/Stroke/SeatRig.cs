using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>What of a seat's rig decides its gearing and its arc. Says nothing of the rower.</summary>
public sealed record SeatRig
{
    private SeatRig(Rowing rowing, Length width, Length inboard, Length oarLength, Length workThrough)
    {
        (Rowing, Width, Inboard, OarLength, WorkThrough) = (rowing, width, inboard, oarLength, workThrough);
    }

    /// <summary>Sweep or scull.</summary>
    public Rowing Rowing { get; }

    /// <summary>Sweep: the spread. Scull: the span.</summary>
    public Length Width { get; }

    /// <summary>From the handle's end to the collar's face; of both sculls.</summary>
    public Length Inboard { get; }

    /// <summary>The whole oar, above <see cref="Inboard"/>.</summary>
    public Length OarLength { get; }

    /// <summary>How far the seat's front edge at full slide passes the line through the pins: it goes where the stretcher goes.</summary>
    public Length WorkThrough { get; }

    /// <summary>From the keel line to the pin: the spread, or half the span.</summary>
    public Length ToPin => ToPinOf(Rowing, Width);

    /// <summary>From the collar's face to the blade's tip.</summary>
    public Length Outboard => OarLength - Inboard;

    /// <summary>A seat's rig.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A spread, span or inboard not above 0, or an oar no longer than its inboard.</exception>
    public static SeatRig Of(Rowing rowing, Length width, Length inboard, Length oarLength, Length workThrough)
    {
        Above(Length.Zero, width, nameof(width));
        Above(Length.Zero, inboard, nameof(inboard));
        Above(inboard, oarLength, nameof(oarLength));
        return new(rowing, width, inboard, oarLength, workThrough);
    }

    /// <summary>The same in centimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A spread, span or inboard not above 0, or an oar no longer than its inboard.</exception>
    public static SeatRig FromCentimetres(Rowing rowing, double width, double inboard, double oarLength, double workThrough) => Of(
        rowing,
        Length.FromCentimetres(width),
        Length.FromCentimetres(inboard),
        Length.FromCentimetres(oarLength),
        Length.FromCentimetres(workThrough));

    /// <summary>The middle of what boats of a class are set to, for a crew or for all.</summary>
    public static SeatRig Starting(RigTargets targets)
    {
        ArgumentNullException.ThrowIfNull(targets);
        Rowing rowing = targets.Class.Rowing;
        var seat = new RigPlace(1, null);
        var oar = new RigPlace(1, Side.Port);
        return FromCentimetres(
            rowing,
            Value(WidthOf(rowing), seat),
            Value(RigMeasure.Inboard, oar),
            Value(RigMeasure.OarLength, oar),
            Value(RigMeasure.WorkThrough, seat));

        double Value(RigMeasure measure, RigPlace place) => targets.Find(measure, RigAspect.Value, place)!.Value;
    }

    /// <summary>The four measures, in the order in which a boat is set up.</summary>
    public static RigMeasure[] Measures(Rowing rowing) =>
        [WidthOf(rowing), RigMeasure.Inboard, RigMeasure.OarLength, RigMeasure.WorkThrough];

    /// <summary>From the keel line to the pin: the spread, or half the span.</summary>
    public static Length ToPinOf(Rowing rowing, Length width) => rowing == Rowing.Sweep ? width : 0.5 * width;

    /// <summary>Spread or span.</summary>
    public static RigMeasure WidthOf(Rowing rowing) => rowing == Rowing.Sweep ? RigMeasure.Spread : RigMeasure.Span;

    /// <summary>One of the four.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of them.</exception>
    public Length Get(RigMeasure measure) => measure switch
    {
        RigMeasure.Spread or RigMeasure.Span => Width,
        RigMeasure.Inboard => Inboard,
        RigMeasure.OarLength => OarLength,
        RigMeasure.WorkThrough => WorkThrough,
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Gearing and arc do not follow from it."),
    };

    /// <summary>The rig with one of the four at another value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of them, or the rig would not hold together.</exception>
    public SeatRig With(RigMeasure measure, Length value) => measure switch
    {
        RigMeasure.Spread or RigMeasure.Span => Of(Rowing, value, Inboard, OarLength, WorkThrough),
        RigMeasure.Inboard => Of(Rowing, Width, value, OarLength, WorkThrough),
        RigMeasure.OarLength => Of(Rowing, Width, Inboard, value, WorkThrough),
        RigMeasure.WorkThrough => Of(Rowing, Width, Inboard, OarLength, value),
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Gearing and arc do not follow from it."),
    };

    /// <summary>The rig after several steps, taken together.</summary>
    /// <returns>Null where it would not hold together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A step moves none of the four.</exception>
    public SeatRig? After(IReadOnlyList<RigStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        (Length width, Length inboard, Length oarLength, Length workThrough) = (Width, Inboard, OarLength, WorkThrough);
        foreach (RigStep step in steps)
        {
            switch (step.Measure)
            {
                case RigMeasure.Spread or RigMeasure.Span:
                    width += step.By;
                    break;
                case RigMeasure.Inboard:
                    inboard += step.By;
                    break;
                case RigMeasure.OarLength:
                    oarLength += step.By;
                    break;
                case RigMeasure.WorkThrough:
                    workThrough += step.By;
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(steps), step.Measure, "Gearing and arc do not follow from it.");
            }
        }

        return width > Length.Zero && inboard > Length.Zero && oarLength > inboard
            ? new(Rowing, width, inboard, oarLength, workThrough)
            : null;
    }

    private static void Above(Length least, Length value, string name)
    {
        if (value <= least)
        {
            throw new ArgumentOutOfRangeException(name, value, $"It must be above {least}.");
        }
    }
}
