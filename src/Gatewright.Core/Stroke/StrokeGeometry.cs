using Gatewright.Core.Geometry;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>The stroke that a rower of some reach takes at a seat of some rig: catch, finish, and all that follows.</summary>
/// <remarks>
/// Exact plane trigonometry; docs/method-stroke.md derives it. With h from the pin to the hands, S from the keel line to the
/// pin, the shoulder at the catch at (s, b) and arms of length A: (h sin θ − s)² + (S − b − h cos θ)² = A², of whose two
/// answers the one nearer the stern is the catch; at the finish h sin θ = the body's place. The oar is level, the boat does not
/// give, and the rower reaches as far at any rig.
/// </remarks>
public sealed class StrokeGeometry
{
    private StrokeGeometry(SeatRig rig, Reach reach, OarPoints points, OarCircle oar, double atCatch, double atFinish)
    {
        (Rig, Reach, Points, Oar) = (rig, reach, points, oar);
        (CatchRadians, FinishRadians) = (atCatch, atFinish);
    }

    /// <summary>The rig.</summary>
    public SeatRig Rig { get; }

    /// <summary>The rower.</summary>
    public Reach Reach { get; }

    /// <summary>Where hands and water act.</summary>
    public OarPoints Points { get; }

    /// <summary>The oar about its pin.</summary>
    public OarCircle Oar { get; }

    /// <summary>The catch, positive.</summary>
    public OarAngle Catch => new(Angle.FromRadians(CatchRadians));

    /// <summary>The finish, negative beyond abeam.</summary>
    public OarAngle Finish => new(Angle.FromRadians(FinishRadians));

    /// <summary>Where the heels are, from the line through the pins to the stern.</summary>
    public Length Heels => Rig.WorkThrough + Reach.SeatToHeels;

    private double CatchRadians { get; }

    private double FinishRadians { get; }

    /// <summary>The stroke by the usual reach.</summary>
    /// <returns>Null where no rower of that reach could row it.</returns>
    public static StrokeGeometry? Of(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Of(rig, Reach.Usual(rig.Rowing), OarPoints.Usual(rig.Rowing));
    }

    /// <summary>The stroke.</summary>
    /// <returns>
    /// Null where there is none: the hands' circle is not reached at the catch or lies short of the body at the finish, or the
    /// catch is not before the finish, or the gate or the grip is longer than what it is on.
    /// </returns>
    public static StrokeGeometry? Of(SeatRig rig, Reach reach, OarPoints points)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(reach);
        ArgumentNullException.ThrowIfNull(points);
        OarCircle oar = OarCircle.Of(rig, points);
        if (!(oar.ToHands > 0 && oar.ToBlade > 0 && 2 * oar.ToPin > points.GateWidth.Centimetres))
        {
            return null;
        }

        double heels = rig.WorkThrough.Centimetres + reach.SeatToHeels.Centimetres;
        double finish = Math.Asin((heels - reach.AtFinish.Centimetres) / oar.ToHands);
        double atCatch = CatchOf(oar, heels, reach);

        // A NaN, where the circles do not meet, fails the comparison.
        return finish > -Math.PI / 2 && atCatch > finish && atCatch < Math.PI / 2
            ? new(rig, reach, points, oar, atCatch, finish)
            : null;
    }

    /// <summary>One of the figures, in its unit.</summary>
    public double this[StrokeFigure figure] => figure switch
    {
        StrokeFigure.Catch => Catch.Degrees,
        StrokeFigure.Finish => Finish.Degrees,
        StrokeFigure.Arc => Catch.Degrees - Finish.Degrees,
        StrokeFigure.Load => Load,
        StrokeFigure.Gearing => Gearing.Plain(Rig),
        StrokeFigure.GearingWithGate => Gearing.WithGate(Rig, Points.GateWidth),
        StrokeFigure.Lever => Gearing.Lever(Rig),
        _ => Gearing.OverlapOf(Rig).Centimetres,
    };

    /// <summary>
    /// While a blade that does not slip turns by dθ the hull goes o dθ/cos θ and the hands go h dθ; over the drive that is
    /// (o/h) times the mean of 1/cos θ, whose integral is asinh(tan θ).
    /// </summary>
    private double Load => Oar.ToBlade / Oar.ToHands
        * (Math.Asinh(Math.Tan(CatchRadians)) - Math.Asinh(Math.Tan(FinishRadians)))
        / (CatchRadians - FinishRadians);

    private static double CatchOf(OarCircle oar, double heels, Reach reach)
    {
        double arms = reach.Arms.Centimetres;
        double shoulder = heels + reach.AtCatch.Centimetres - arms;
        double across = oar.ToPin - reach.Shoulder.Centimetres;
        double apart = Math.Sqrt((shoulder * shoulder) + (across * across));
        double cosine = ((oar.ToHands * oar.ToHands) + (apart * apart) - (arms * arms)) / (2 * oar.ToHands * apart);
        return Math.Atan2(shoulder, across) + Math.Acos(cosine);
    }
}
