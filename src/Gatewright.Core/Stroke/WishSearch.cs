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
    // Well under what can be set: a millimetre of inboard turns the catch by 0.05°.
    private const double CloseEnough = 1e-7;
    private const int MostRounds = 40;

    private readonly StrokeGeometry _from;
    private readonly IReadOnlyList<StrokeWish> _wishes;
    private readonly IReadOnlyList<AllowedStep> _allowed;

    private WishSearch(StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed) =>
        (_from, _wishes, _allowed) = (from, wishes, allowed);

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

        var search = new WishSearch(from, wishes, allowed);
        if (Array.TrueForAll(search.Misses(search.Now())!, m => Math.Abs(m) < CloseEnough))
        {
            return new([new([], from, 0)], null);
        }

        return new(search.Fewest(), wishes.Count == 1 ? search.Range() : null);
    }

    private List<WishAnswer> Fewest()
    {
        for (int size = _wishes.Count; size <= _allowed.Count; size++)
        {
            var answers = new List<WishAnswer>();
            for (int set = 0; set < 1 << _allowed.Count; set++)
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
            if (BitOperations.PopCount((uint)free) != _wishes.Count)
            {
                continue;
            }

            int bound = set & ~free;
            for (int high = bound; ; high = (high - 1) & bound)
            {
                if (Solve(free, bound, high) is { } values && Moved(values) < least && Answer(set, values) is { } answer)
                {
                    (best, least) = (answer, Moved(values));
                }

                if (high == 0)
                {
                    break;
                }
            }
        }

        return best;
    }

    /// <summary>Newton's rounds over the free measures, the others where they are or at a bound; null where they do not end inside.</summary>
    private double[]? Solve(int free, int bound, int high)
    {
        double[] values = Now();
        var at = new List<int>();
        for (int i = 0; i < values.Length; i++)
        {
            if ((bound >> i & 1) == 1)
            {
                values[i] = ((high >> i & 1) == 1 ? _allowed[i].Most : _allowed[i].Least).Centimetres;
            }

            if ((free >> i & 1) == 1)
            {
                at.Add(i);
            }
        }

        for (int round = 0; round < MostRounds; round++)
        {
            if (Misses(values) is not { } misses)
            {
                return null;
            }

            if (Array.TrueForAll(misses, m => Math.Abs(m) < CloseEnough))
            {
                return at.TrueForAll(i => IsAllowed(i, values[i])) ? values : null;
            }

            if (!Improve(values, at, misses))
            {
                return null;
            }
        }

        return null;
    }

    private bool Improve(double[] values, List<int> at, double[] misses)
    {
        const double Step = 1e-4;
        int n = at.Count;
        double[,] slopes = new double[n, n + 1];
        for (int column = 0; column < n; column++)
        {
            double was = values[at[column]];
            values[at[column]] = was + Step;
            double[]? after = Misses(values);
            values[at[column]] = was;
            if (after is null)
            {
                return false;
            }

            for (int row = 0; row < n; row++)
            {
                slopes[row, column] = (after[row] - misses[row]) / Step;
                slopes[row, n] = -misses[row];
            }
        }

        if (LinearStep(slopes, n) is not { } step)
        {
            return false;
        }

        for (int column = 0; column < n; column++)
        {
            // No further than a boat could ever be set: beyond, the circles no longer meet.
            values[at[column]] += Math.Clamp(step[column], -10, 10);
        }

        return true;
    }

    /// <summary>Gauss's elimination with the largest pivot; null where the measures do not move the wishes apart.</summary>
    private static double[]? LinearStep(double[,] rows, int n)
    {
        for (int column = 0; column < n; column++)
        {
            int pivot = column;
            for (int row = column + 1; row < n; row++)
            {
                pivot = Math.Abs(rows[row, column]) > Math.Abs(rows[pivot, column]) ? row : pivot;
            }

            if (Math.Abs(rows[pivot, column]) < 1e-9)
            {
                return null;
            }

            for (int k = column; k <= n; k++)
            {
                (rows[column, k], rows[pivot, k]) = (rows[pivot, k], rows[column, k]);
            }

            for (int row = 0; row < n; row++)
            {
                double factor = row == column ? 0 : rows[row, column] / rows[column, column];
                for (int k = column; k <= n; k++)
                {
                    rows[row, k] -= factor * rows[column, k];
                }
            }
        }

        double[] step = new double[n];
        for (int row = 0; row < n; row++)
        {
            step[row] = rows[row, n] / rows[row, row];
        }

        return step;
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

            double now = _from.Rig.Get(_allowed[i].Measure).Centimetres;
            double by = Math.Round(values[i] - now, 1);
            if (by == 0)
            {
                // A set with less in it says the same.
                return null;
            }

            rounded[i] = now + by;
            minutes += _allowed[i].Minutes;
            steps.Add(new(_allowed[i].Measure, Length.FromCentimetres(by)));
        }

        return At(rounded) is { } after ? new(steps, after, minutes) : null;
    }

    private (double Least, double Most)? Range()
    {
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        double[] values = new double[_allowed.Count];
        for (int corner = 0; corner < 1 << _allowed.Count; corner++)
        {
            for (int i = 0; i < values.Length; i++)
            {
                values[i] = (corner >> i & 1) == 1 ? _allowed[i].Most.Centimetres : _allowed[i].Least.Centimetres;
            }

            if (At(values) is { } stroke)
            {
                (least, most) = (Math.Min(least, stroke[_wishes[0].Figure]), Math.Max(most, stroke[_wishes[0].Figure]));
            }
        }

        return least <= most ? (least, most) : null;
    }

    private double[] Now() => AllowedRig.Now(_from.Rig, _allowed);

    private double Moved(double[] values)
    {
        double sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double room = _allowed[i].Most.Centimetres - _allowed[i].Least.Centimetres;
            sum += room > 0 ? Math.Abs(values[i] - _from.Rig.Get(_allowed[i].Measure).Centimetres) / room : 0;
        }

        return sum;
    }

    private bool IsAllowed(int i, double value) =>
        value >= _allowed[i].Least.Centimetres - CloseEnough && value <= _allowed[i].Most.Centimetres + CloseEnough;

    private double[]? Misses(double[] values)
    {
        if (At(values) is not { } stroke)
        {
            return null;
        }

        double[] misses = new double[_wishes.Count];
        for (int i = 0; i < misses.Length; i++)
        {
            misses[i] = stroke[_wishes[i].Figure] - _wishes[i].Value;
        }

        return misses;
    }

    private StrokeGeometry? At(double[] values) => AllowedRig.At(_from, _allowed, values);
}
