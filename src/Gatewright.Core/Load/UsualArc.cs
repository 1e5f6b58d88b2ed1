using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>
/// The stations' arc, for a seat whose own is not known: either end may be elsewhere, apart from the other; the levers are those
/// of the rig as far as it is known.
/// </summary>
internal sealed class UsualArc : SeatDrive
{
    // Central differences: small beside what bends any of the figures, large beside rounding.
    private const double Step = 0.01;

    private readonly MeasuredSeat _seat;
    private readonly RigMeasure[] _measures;
    private readonly double _endU;

    public UsualArc(MeasuredSeat seat, StationAngles usual, Angle endU)
        : base(CircleOf(seat.Rig), usual) =>
        (_seat, _measures, _endU) = (seat, SeatRig.Measures(seat.Rig.Rowing), endU.Degrees);

    /// <inheritdoc/>
    public override bool IsOwn => false;

    /// <inheritdoc/>
    public override double[][] Slopes(int figures, FiguresOfDrive of)
    {
        double[][] slopes = new double[figures][];
        for (int figure = 0; figure < figures; figure++)
        {
            slopes[figure] = new double[_measures.Length + 2];
        }

        double[] more = new double[figures];
        double[] less = new double[figures];
        for (int input = 0; input < _measures.Length + 2; input++)
        {
            At(input, Step, of, more);
            At(input, -Step, of, less);
            for (int figure = 0; figure < figures; figure++)
            {
                slopes[figure][input] = (more[figure] - less[figure]) / (2 * Step);
            }
        }

        return slopes;
    }

    /// <inheritdoc/>
    public override double Variance(ReadOnlySpan<double> slopes)
    {
        (double atCatch, double atFinish) = (slopes[^2] * _endU, slopes[^1] * _endU);
        return _seat.Covariance.Variance(slopes[..^2]) + (atCatch * atCatch) + (atFinish * atFinish);
    }

    private void At(int input, double by, FiguresOfDrive of, double[] into)
    {
        int end = input - _measures.Length;
        SeatRig rig = end < 0 ? _seat.Rig.With(_measures[input], _seat.Rig.Get(_measures[input]) + Length.FromCentimetres(by)) : _seat.Rig;
        StationAngles drive = end switch
        {
            0 => Drive with { Catch = OarAngle.FromDegrees(Drive.Catch.Degrees + by) },
            1 => Drive with { Finish = OarAngle.FromDegrees(Drive.Finish.Degrees + by) },
            _ => Drive,
        };
        of(CircleOf(rig), drive, into);
    }

    private static OarCircle CircleOf(SeatRig rig) => OarCircle.Of(rig, OarPoints.Usual(rig.Rowing));
}
