using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>
/// All that a stroke follows from, as numbers that may be off: the rig's four measures, then how far the rower reaches at the
/// catch and at the finish, and the arms.
/// </summary>
internal sealed class StrokeInputs
{
    /// <summary>How well a rower's reach is known: the same rower stops elsewhere from stroke to stroke. 2 cm, ours.</summary>
    private const double ReachU = 2;

    /// <summary>The arms, shoulder and trunk behind them included. 3 cm, ours.</summary>
    private const double ArmsU = 3;

    // Central differences: small beside what bends any of the figures, large beside rounding.
    private const double Step = 0.01;

    private const int OfRig = 4;

    /// <summary>How many inputs there are.</summary>
    public const int Count = OfRig + 3;

    private readonly MeasuredSeat _seat;
    private readonly Reach _reach;
    private readonly OarPoints _points;
    private readonly RigMeasure[] _measures;

    public StrokeInputs(MeasuredSeat seat, Reach reach, OarPoints points)
    {
        (_seat, _reach, _points) = (seat, reach, points);
        _measures = SeatRig.Measures(seat.Rig.Rowing);
    }

    /// <summary>
    /// The standard uncertainties of several figures at once: the law of propagation (JCGM 100:2008, equation 13) with
    /// sensitivities by central differences.
    /// </summary>
    /// <param name="figures">How many.</param>
    /// <param name="of">The figures of a rig and a reach; false where there is no stroke.</param>
    public double[] U(int figures, Func<SeatRig, Reach, double[], bool> of) =>
        Array.ConvertAll(Slopes(figures, of), slopes => Math.Sqrt(Variance(slopes)));

    /// <summary>How figures follow each input, a centimetre: a row a figure; infinite where there is no stroke so near.</summary>
    /// <param name="figures">How many.</param>
    /// <param name="of">The figures of a rig and a reach; false where there is no stroke.</param>
    public double[][] Slopes(int figures, Func<SeatRig, Reach, double[], bool> of)
    {
        double[][] slopes = new double[figures][];
        for (int figure = 0; figure < figures; figure++)
        {
            slopes[figure] = new double[Count];
        }

        double[] more = new double[figures];
        double[] less = new double[figures];
        for (int input = 0; input < Count; input++)
        {
            bool isDefined = At(input, Step, of, more) & At(input, -Step, of, less);
            for (int figure = 0; figure < figures; figure++)
            {
                // At the very edge of what can be rowed no uncertainty can be told.
                slopes[figure][input] = isDefined ? (more[figure] - less[figure]) / (2 * Step) : double.PositiveInfinity;
            }
        }

        return slopes;
    }

    /// <summary>The variance of a figure that follows the inputs so; infinite where a slope is.</summary>
    public double Variance(ReadOnlySpan<double> slopes)
    {
        // Times a covariance of 0, or less another, an infinite slope would leave no number at all.
        if (slopes.Contains(double.PositiveInfinity))
        {
            return double.PositiveInfinity;
        }

        double variance = _seat.Covariance.Variance(slopes[..OfRig]);
        for (int input = OfRig; input < Count; input++)
        {
            double u = input < Count - 1 ? ReachU : ArmsU;
            variance += slopes[input] * slopes[input] * u * u;
        }

        return variance;
    }

    private bool At(int input, double by, Func<SeatRig, Reach, double[], bool> of, double[] into)
    {
        Length step = Length.FromCentimetres(by);
        SeatRig rig = input < OfRig ? _seat.Rig.With(_measures[input], _seat.Rig.Get(_measures[input]) + step) : _seat.Rig;
        Reach reach = (input - OfRig) switch
        {
            0 => _reach with { AtCatch = _reach.AtCatch + step },
            1 => _reach with { AtFinish = _reach.AtFinish + step },
            2 => _reach with { Arms = _reach.Arms + step },
            _ => _reach,
        };
        return of(rig, reach, into);
    }

    /// <summary>All figures of a stroke, in their order.</summary>
    public bool Figures(SeatRig rig, Reach reach, double[] into)
    {
        if (StrokeGeometry.Of(rig, reach, _points) is not { } stroke)
        {
            return false;
        }

        for (int i = 0; i < into.Length; i++)
        {
            into[i] = stroke[StrokeFigures.All[i]];
        }

        return true;
    }
}
