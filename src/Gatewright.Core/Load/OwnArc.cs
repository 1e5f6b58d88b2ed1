using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>
/// The arc that the usual rower takes at a seat's rig: it rests on the rig's four measures and on the reach, which is another
/// at every seat.
/// </summary>
internal sealed class OwnArc : SeatDrive
{
    private readonly StrokeInputs _inputs;
    private readonly OarPoints _points;

    private OwnArc(StrokeGeometry stroke, StrokeInputs inputs, OarPoints points)
        : base(stroke.Oar, Ends(stroke)) => (_inputs, _points) = (inputs, points);

    /// <inheritdoc/>
    public override bool IsOwn => true;

    /// <summary>A seat's own arc.</summary>
    /// <returns>
    /// Null where the usual rower could not row it, or only just, or would not come past abeam: such a figure is rather written
    /// down wrong.
    /// </returns>
    public static OwnArc? Of(MeasuredSeat seat)
    {
        var reach = Reach.Usual(seat.Rig.Rowing);
        var points = OarPoints.Usual(seat.Rig.Rowing);
        if (StrokeGeometry.Of(seat.Rig, reach, points) is not { Catch.Degrees: > 0, Finish.Degrees: < 0 } stroke)
        {
            return null;
        }

        var own = new OwnArc(stroke, new(seat, reach, points), points);
        double[][] slopes = own.Slopes(1, (_, drive, into) => into[0] = drive.Catch.Degrees);
        return Array.TrueForAll(slopes[0], double.IsFinite) ? own : null;
    }

    /// <inheritdoc/>
    public override double[][] Slopes(int figures, FiguresOfDrive of) => _inputs.Slopes(figures, (rig, reach, into) =>
    {
        if (StrokeGeometry.Of(rig, reach, _points) is not { } stroke)
        {
            return false;
        }

        of(stroke.Oar, Ends(stroke), into);
        return true;
    });

    /// <inheritdoc/>
    public override double Variance(ReadOnlySpan<double> slopes) => _inputs.Variance(slopes);

    private static StationAngles Ends(StrokeGeometry stroke) => new(stroke.Catch, OarAngle.FromDegrees(0), stroke.Finish);
}
