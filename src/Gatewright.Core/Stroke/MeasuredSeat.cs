using Gatewright.Core.Numerics;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>A seat's rig as it is known: measured where it was, else taken from the targets, and how well.</summary>
/// <param name="Rig">The four measures.</param>
/// <param name="Covariance">Theirs, in the order of <see cref="SeatRig.Measures"/>, in square centimetres.</param>
/// <param name="Assumed">Which of them nobody measured, or were measured so that they cannot be.</param>
public sealed record MeasuredSeat(SeatRig Rig, CovarianceMatrix Covariance, IReadOnlyList<RigMeasure> Assumed)
{
    private static readonly double RootThree = Math.Sqrt(3);

    /// <summary>A rig typed in: each measure as if taken once, all with one tape on one day.</summary>
    public static MeasuredSeat Typed(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        RigErrors[] errors = Array.ConvertAll(SeatRig.Measures(rig.Rowing), RigErrors.Usual);
        return new(rig, Matrix((i, j) => i == j ? Square(errors[i].Once) : errors[i].Tape * errors[j].Tape), []);
    }

    /// <summary>
    /// A seat of a boat: what was measured there, the mean of both sides in sculling; where nothing was, the target, with its
    /// tolerance as the half-width of a rectangular distribution (JCGM 100:2008, 4.3.7). So are inboard and length of an oar that would
    /// be no longer than its inboard, and a width or an inboard that is none.
    /// </summary>
    public static MeasuredSeat Of(RigFigures figures, RigTargets targets, int seat)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(targets);
        Rowing rowing = targets.Class.Rowing;
        RigMeasure[] measures = SeatRig.Measures(rowing);
        var found = new List<int>[measures.Length];
        double[] values = new double[measures.Length];
        double[] assumedU = new double[measures.Length];
        for (int i = 0; i < measures.Length; i++)
        {
            found[i] = Found(figures, measures[i], seat);
            foreach (int at in found[i])
            {
                values[i] += figures.All[at].Value.Value / found[i].Count;
            }

            if (found[i].Count == 0)
            {
                Assume(i);
            }
        }

        if (values[0] <= 0)
        {
            Assume(0);
        }

        // One of the two was read or written wrongly, and which cannot be told.
        if (values[1] <= 0 || values[2] <= values[1])
        {
            Assume(1);
            Assume(2);
        }

        RigMeasure[] assumed = [.. measures.Where((_, i) => found[i].Count == 0)];
        return new(SeatRig.FromCentimetres(rowing, values[0], values[1], values[2], values[3]), Matrix(Of), assumed);

        void Assume(int i)
        {
            RigTarget target = targets.Find(measures[i], RigAspect.Value, Place(measures[i], seat))!;
            (found[i], values[i], assumedU[i]) = ([], target.Value, target.Tolerance / RootThree);
        }

        double Of(int i, int j)
        {
            if (found[i].Count == 0 || found[j].Count == 0)
            {
                return i == j ? Square(assumedU[i]) : 0;
            }

            double sum = 0;
            foreach (int one in found[i])
            {
                foreach (int other in found[j])
                {
                    sum += figures.Covariance(one, other);
                }
            }

            return sum / (found[i].Count * found[j].Count);
        }
    }

    private static List<int> Found(RigFigures figures, RigMeasure measure, int seat)
    {
        var found = new List<int>();
        for (int at = 0; at < figures.All.Count; at++)
        {
            if (figures.All[at].Measure == measure && figures.All[at].Place.Seat == seat)
            {
                found.Add(at);
            }
        }

        return found;
    }

    private static RigPlace Place(RigMeasure measure, int seat) => new(seat, measure.HasSide() ? Side.Port : null);

    private static CovarianceMatrix Matrix(Func<int, int, double> of)
    {
        double[] rows = new double[16];
        for (int i = 0; i < 4; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                rows[(4 * i) + j] = rows[(4 * j) + i] = of(i, j);
            }
        }

        return new(4, rows);
    }

    private static double Square(double value) => value * value;
}
