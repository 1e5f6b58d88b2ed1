using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>What is wanted of a stroke, and which measures may be set to reach it: a point is a value of each of them, in centimetres.</summary>
internal sealed record WishPoints(StrokeGeometry From, IReadOnlyList<StrokeWish> Wishes, IReadOnlyList<AllowedStep> Allowed)
{
    // Well under what can be set: a millimetre of inboard turns the catch by 0.05°.
    private const double CloseEnough = 1e-7;

    /// <summary>Whether all wishes are met.</summary>
    public static bool AreMet(double[] misses) => Array.TrueForAll(misses, m => Math.Abs(m) < CloseEnough);

    /// <summary>The point where the rig is now.</summary>
    public double[] Now()
    {
        double[] values = new double[Allowed.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = From.Rig.Get(Allowed[i].Measure).Centimetres;
        }

        return values;
    }

    /// <summary>How far a point is from now: each measure's way by the room it has, summed.</summary>
    public double Moved(double[] values)
    {
        double sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double room = Allowed[i].Most.Centimetres - Allowed[i].Least.Centimetres;
            sum += room > 0 ? Math.Abs(values[i] - From.Rig.Get(Allowed[i].Measure).Centimetres) / room : 0;
        }

        return sum;
    }

    /// <summary>Whether a measure may be set so.</summary>
    public bool IsAllowed(int i, double value) =>
        value >= Allowed[i].Least.Centimetres - CloseEnough && value <= Allowed[i].Most.Centimetres + CloseEnough;

    /// <summary>By how much a point misses each wish, in its unit; null where there is no stroke.</summary>
    public double[]? Misses(double[] values)
    {
        if (At(values) is not { } stroke)
        {
            return null;
        }

        double[] misses = new double[Wishes.Count];
        for (int i = 0; i < misses.Length; i++)
        {
            misses[i] = stroke[Wishes[i].Figure] - Wishes[i].Value;
        }

        return misses;
    }

    /// <summary>The stroke with the measures at such values, in centimetres; null where there is none.</summary>
    public StrokeGeometry? At(double[] values)
    {
        var steps = new RigStep[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            RigMeasure measure = Allowed[i].Measure;
            steps[i] = new(measure, Length.FromCentimetres(values[i]) - From.Rig.Get(measure));
        }

        return From.Rig.After(steps) is { } rig ? StrokeGeometry.Of(rig, From.Reach, From.Points) : null;
    }
}
