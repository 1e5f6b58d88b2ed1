using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>A bound that keeps a wish from being met.</summary>
/// <param name="Measure">The measure that may go no further.</param>
/// <param name="Bound">Where it ends.</param>
/// <param name="IsMost">Whether that is the most it may be; else the least.</param>
public readonly record struct StoppingBound(RigMeasure Measure, Length Bound, bool IsMost);

/// <summary>How near one comes to wishes that cannot be met within what may be set, and what stops one there.</summary>
/// <param name="Nearest">What to set, to the millimetre, and the stroke after it; no step where any would lead away.</param>
/// <param name="Stopping">The bounds beyond which it would come nearer still; none where the wishes contradict each other.</param>
public sealed record NearestRig(WishAnswer Nearest, IReadOnlyList<StoppingBound> Stopping)
{
    private const int MostRounds = 30;
    private const int Sweeps = 100;
    private const int MostHalvings = 8;

    // A thousandth of the millimetre to which a rig is set.
    private const double CloseEnough = 1e-4;

    // By less than this share another valley is no nearer: no figure that is shown would tell.
    private const double Nearer = 1e-6;

    // Below this a bound that were moved by a centimetre would change no figure that is shown.
    private const double LeastPull = 1e-3;

    /// <summary>
    /// The rig within the bounds with the least sum of squared misses: Gauss's and Newton's rounds, each the exact least squares of the
    /// slopes within the bounds by one measure after another, from several starts. One hundredth of a ratio counts as much as one degree or one centimetre (ours).
    /// </summary>
    /// <exception cref="ArgumentException">No wish, or nothing that may be set.</exception>
    public static NearestRig Of(StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(wishes);
        ArgumentNullException.ThrowIfNull(allowed);
        if (wishes.Count == 0 || allowed.Count == 0)
        {
            throw new ArgumentException("There is something to come near only with a wish, and with a measure that may be set.", nameof(wishes));
        }

        var points = new WishPoints(from, wishes, allowed);
        (double[] best, double least) = (points.Now(), double.PositiveInfinity);
        foreach (double[] start in Starts(points))
        {
            double[] values = Descended(points, start);
            double sum = Misses(points, values) is { } misses ? Sum(misses) : double.PositiveInfinity;

            // Of two as near, the one found first stays: the search from where the rig is comes before all others.
            if (sum < least * (1 - Nearer))
            {
                (best, least) = (values, sum);
            }
        }

        return new(Rounded(points, best), Stops(points, best));
    }

    /// <summary>
    /// Where to look from: the rig as it is, and with each measure at either of its bounds. What is wished may have two valleys, as
    /// a catch that comes nearer with the feet far forward or far back, and a descent ends in the one it began in.
    /// </summary>
    private static IEnumerable<double[]> Starts(WishPoints points)
    {
        yield return points.Now();
        for (int i = 0; i < points.Allowed.Count; i++)
        {
            foreach (Length bound in (Length[])[points.Allowed[i].Least, points.Allowed[i].Most])
            {
                double[] start = points.Now();
                start[i] = bound.Centimetres;
                yield return start;
            }
        }
    }

    private static double[] Descended(WishPoints points, double[] values)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            if (Slopes(points, values) is not var (misses, slopes)
                || Better(points, values, Step(misses, slopes, values, points.Allowed), Sum(misses)) is not { } next)
            {
                break;
            }

            values = next;
        }

        return values;
    }

    private static WishAnswer Rounded(WishPoints points, double[] values)
    {
        double[] set = points.Now();
        var steps = new List<RigStep>();
        int minutes = 0;
        for (int i = 0; i < set.Length; i++)
        {
            double by = points.Allowed[i].ToMillimetre(set[i], values[i]);
            if (by != 0)
            {
                set[i] += by;
                steps.Add(new(points.Allowed[i].Measure, Length.FromCentimetres(by)));
                minutes += points.Allowed[i].Minutes;
            }
        }

        return points.At(set) is { } after ? new(steps, after, minutes) : new([], points.From, 0);
    }

    /// <summary>The bounds that the misses pull against.</summary>
    private static List<StoppingBound> Stops(WishPoints points, double[] values)
    {
        var stops = new List<StoppingBound>();
        if (Slopes(points, values) is var (misses, slopes))
        {
            for (int i = 0; i < values.Length; i++)
            {
                double pull = 0;
                for (int wish = 0; wish < misses.Length; wish++)
                {
                    pull -= misses[wish] * slopes[wish][i];
                }

                Length bound = pull > 0 ? points.Allowed[i].Most : points.Allowed[i].Least;
                if (Math.Abs(pull) > LeastPull && Math.Abs(values[i] - bound.Centimetres) < CloseEnough)
                {
                    stops.Add(new(points.Allowed[i].Measure, bound, pull > 0));
                }
            }
        }

        return stops;
    }

    /// <summary>The step, or so much of it as comes nearer; null where none does.</summary>
    private static double[]? Better(WishPoints points, double[] values, double[] step, double sum)
    {
        double share = 1;
        for (int halving = 0; halving < MostHalvings; halving++, share /= 2)
        {
            double[] next = new double[values.Length];
            double moved = 0;
            for (int i = 0; i < next.Length; i++)
            {
                next[i] = values[i] + (share * step[i]);
                moved = Math.Max(moved, Math.Abs(share * step[i]));
            }

            if (moved < CloseEnough)
            {
                return null;
            }

            if (Misses(points, next) is { } misses && Sum(misses) < sum)
            {
                return next;
            }
        }

        return null;
    }

    private static double[] Step(double[] misses, double[][] slopes, double[] values, IReadOnlyList<AllowedStep> allowed)
    {
        double[] step = new double[values.Length];
        double[] left = [.. misses];
        for (int sweep = 0; sweep < Sweeps; sweep++)
        {
            for (int i = 0; i < step.Length; i++)
            {
                (double along, double square) = (0, 0);
                for (int wish = 0; wish < left.Length; wish++)
                {
                    along += left[wish] * slopes[wish][i];
                    square += slopes[wish][i] * slopes[wish][i];
                }

                double to = square == 0 ? step[i] : Math.Clamp(
                    step[i] - (along / square), allowed[i].Least.Centimetres - values[i], allowed[i].Most.Centimetres - values[i]);
                for (int wish = 0; wish < left.Length; wish++)
                {
                    left[wish] += (to - step[i]) * slopes[wish][i];
                }

                step[i] = to;
            }
        }

        return step;
    }

    private static (double[] Misses, double[][] Slopes)? Slopes(WishPoints points, double[] values)
    {
        const double Small = 1e-4;
        if (Misses(points, values) is not { } misses)
        {
            return null;
        }

        double[][] slopes = Array.ConvertAll(misses, _ => new double[values.Length]);
        for (int i = 0; i < values.Length; i++)
        {
            double was = values[i];
            values[i] = was + Small;
            double[]? after = Misses(points, values);
            values[i] = was;
            for (int wish = 0; wish < misses.Length; wish++)
            {
                slopes[wish][i] = after is null ? 0 : (after[wish] - misses[wish]) / Small;
            }
        }

        return (misses, slopes);
    }

    private static double[]? Misses(WishPoints points, double[] values)
    {
        if (points.Misses(values) is not { } misses)
        {
            return null;
        }

        for (int i = 0; i < misses.Length; i++)
        {
            StrokeFigure figure = points.Wishes[i].Figure;
            misses[i] *= figure.IsRatio() ? 100 / points.From[figure] : 1;
        }

        return misses;
    }

    private static double Sum(double[] misses)
    {
        double sum = 0;
        foreach (double miss in misses)
        {
            sum += miss * miss;
        }

        return sum;
    }
}
