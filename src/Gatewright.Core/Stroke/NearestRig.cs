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

    // Below this a bound that were moved by a centimetre would change no figure that is shown.
    private const double LeastPull = 1e-3;

    /// <summary>
    /// The rig within the bounds with the least sum of squared misses: Gauss's and Newton's rounds, each the exact least squares of the
    /// slopes within the bounds by one measure after another. One hundredth of a ratio counts as much as one degree or one centimetre (ours).
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

        double[] values = AllowedRig.Now(from.Rig, allowed);
        for (int round = 0; round < MostRounds; round++)
        {
            if (Slopes(from, wishes, allowed, values) is not var (misses, slopes)
                || Better(from, wishes, allowed, values, Step(misses, slopes, values, allowed), Sum(misses)) is not { } next)
            {
                break;
            }

            values = next;
        }

        return new(Rounded(from, allowed, values), Stops(from, wishes, allowed, values));
    }

    private static WishAnswer Rounded(StrokeGeometry from, IReadOnlyList<AllowedStep> allowed, double[] values)
    {
        double[] set = AllowedRig.Now(from.Rig, allowed);
        var steps = new List<RigStep>();
        int minutes = 0;
        for (int i = 0; i < set.Length; i++)
        {
            double by = ToMillimetre(values[i] - set[i], allowed[i].Least.Centimetres - set[i], allowed[i].Most.Centimetres - set[i]);
            if (by != 0)
            {
                set[i] += by;
                steps.Add(new(allowed[i].Measure, Length.FromCentimetres(by)));
                minutes += allowed[i].Minutes;
            }
        }

        return AllowedRig.At(from, allowed, set) is { } after ? new(steps, after, minutes) : new([], from, 0);
    }

    /// <summary>To the nearest millimetre that lies within the bounds.</summary>
    private static double ToMillimetre(double by, double least, double most)
    {
        double round = Math.Round(by, 1);
        return Math.Round(round > most + CloseEnough ? round - 0.1 : round < least - CloseEnough ? round + 0.1 : round, 1);
    }

    /// <summary>The bounds that the misses pull against.</summary>
    private static List<StoppingBound> Stops(
        StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed, double[] values)
    {
        var stops = new List<StoppingBound>();
        if (Slopes(from, wishes, allowed, values) is var (misses, slopes))
        {
            for (int i = 0; i < values.Length; i++)
            {
                double pull = 0;
                for (int wish = 0; wish < misses.Length; wish++)
                {
                    pull -= misses[wish] * slopes[wish][i];
                }

                Length bound = pull > 0 ? allowed[i].Most : allowed[i].Least;
                if (Math.Abs(pull) > LeastPull && Math.Abs(values[i] - bound.Centimetres) < CloseEnough)
                {
                    stops.Add(new(allowed[i].Measure, bound, pull > 0));
                }
            }
        }

        return stops;
    }

    /// <summary>The step, or so much of it as comes nearer; null where none does.</summary>
    private static double[]? Better(
        StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed, double[] values, double[] step, double sum)
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

            if (Misses(from, wishes, allowed, next) is { } misses && Sum(misses) < sum)
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

    private static (double[] Misses, double[][] Slopes)? Slopes(
        StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed, double[] values)
    {
        const double Small = 1e-4;
        if (Misses(from, wishes, allowed, values) is not { } misses)
        {
            return null;
        }

        double[][] slopes = Array.ConvertAll(misses, _ => new double[values.Length]);
        for (int i = 0; i < values.Length; i++)
        {
            double was = values[i];
            values[i] = was + Small;
            double[]? after = Misses(from, wishes, allowed, values);
            values[i] = was;
            for (int wish = 0; wish < misses.Length; wish++)
            {
                slopes[wish][i] = after is null ? 0 : (after[wish] - misses[wish]) / Small;
            }
        }

        return (misses, slopes);
    }

    private static double[]? Misses(StrokeGeometry from, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed, double[] values)
    {
        if (AllowedRig.At(from, allowed, values) is not { } stroke)
        {
            return null;
        }

        double[] misses = new double[wishes.Count];
        for (int i = 0; i < misses.Length; i++)
        {
            StrokeWish wish = wishes[i];
            double miss = stroke[wish.Figure] - wish.Value;
            misses[i] = wish.Figure.IsRatio() ? 100 * miss / from[wish.Figure] : miss;
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
