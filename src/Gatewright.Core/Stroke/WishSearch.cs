using System.Numerics;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>Which change gives what is wanted while touching least: the fewest measures first, then the least work.</summary>
/// <remarks>
/// With as many measures as wishes there is a point to find; with more, the answers are lines or sheets that end on the
/// bounds, and if any point of them is allowed so is one with all but as many measures as wishes at a bound. So each set
/// of measures, the smaller first, is tried with every choice of bounds, and nothing that can be reached is missed but where
/// a figure turns back between two bounds.
/// </remarks>
public sealed class WishSearch
{
    private readonly WishPoints _points;
    private readonly WishSolver _solver;

    private WishSearch(WishPoints points) => (_points, _solver) = (points, new(points));

    /// <summary>Searches.</summary>
    /// <exception cref="ArgumentException">No wish, or more wishes than measures that may be set.</exception>
    public static WishFound Of(StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(wishes);
        ArgumentNullException.ThrowIfNull(allowed);
        if (wishes.Count == 0 || wishes.Count > allowed.Count)
        {
            throw new ArgumentException($"{wishes.Count} wishes cannot be met by {allowed.Count} measures.", nameof(wishes));
        }

        var search = new WishSearch(new(from, wishes, allowed));
        if (WishPoints.AreMet(search._points.Misses(search._points.Now())!))
        {
            return new([new([], from, 0)], null);
        }

        return new(search.Fewest(), wishes.Count == 1 ? search.Range() : null);
    }

    private List<WishAnswer> Fewest()
    {
        for (int size = _points.Wishes.Count; size <= _points.Allowed.Count; size++)
        {
            var answers = new List<WishAnswer>();
            for (int set = 0; set < 1 << _points.Allowed.Count; set++)
            {
                if (BitOperations.PopCount((uint)set) == size && Within(set) is { } answer)
                {
                    answers.Add(answer);
                }
            }

            if (answers.Count > 0)
            {
                answers.Sort((one, other) => one.Minutes.CompareTo(other.Minutes));
                return answers;
            }
        }

        return [];
    }

    /// <summary>An answer that sets the measures of a set, of several the one that moves least in all.</summary>
    private WishAnswer? Within(int set)
    {
        WishAnswer? best = null;
        double least = double.PositiveInfinity;
        for (int free = set; free > 0; free = (free - 1) & set)
        {
            if (BitOperations.PopCount((uint)free) != _points.Wishes.Count)
            {
                continue;
            }

            int bound = set & ~free;
            for (int high = bound; ; high = (high - 1) & bound)
            {
                if (_solver.Solve(free, bound, high) is { } values && _points.Moved(values) < least && Answer(set, values) is { } answer)
                {
                    (best, least) = (answer, _points.Moved(values));
                }

                if (high == 0)
                {
                    break;
                }
            }
        }

        return best;
    }

    private WishAnswer? Answer(int set, double[] values)
    {
        var steps = new List<RigStep>();
        double[] rounded = [.. values];
        int minutes = 0;
        for (int i = 0; i < values.Length; i++)
        {
            if ((set >> i & 1) == 0)
            {
                continue;
            }

            double now = _points.From.Rig.Get(_points.Allowed[i].Measure).Centimetres;
            double by = _points.Allowed[i].ToMillimetre(now, values[i]);
            if (by == 0)
            {
                // A set with less in it says the same.
                return null;
            }

            rounded[i] = now + by;
            minutes += _points.Allowed[i].Minutes;
            steps.Add(new(_points.Allowed[i].Measure, Length.FromCentimetres(by)));
        }

        return _points.At(rounded) is { } after ? new(steps, after, minutes) : null;
    }

    private (double Least, double Most)? Range()
    {
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        double[] values = new double[_points.Allowed.Count];
        for (int corner = 0; corner < 1 << _points.Allowed.Count; corner++)
        {
            for (int i = 0; i < values.Length; i++)
            {
                values[i] = (corner >> i & 1) == 1 ? _points.Allowed[i].Most.Centimetres : _points.Allowed[i].Least.Centimetres;
            }

            if (_points.At(values) is { } stroke)
            {
                (least, most) = (Math.Min(least, stroke[_points.Wishes[0].Figure]), Math.Max(most, stroke[_points.Wishes[0].Figure]));
            }
        }

        return least <= most ? (least, most) : null;
    }
}
