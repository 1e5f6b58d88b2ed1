namespace Gatewright.Core.Stroke;

/// <summary>Newton's rounds to the point that meets as many wishes as measures are free.</summary>
internal sealed class WishSolver(WishPoints points)
{
    private const int MostRounds = 40;

    /// <summary>The point over the free measures, the others where they are or at a bound; null where the rounds do not end inside.</summary>
    /// <param name="free">Which measures are sought, a bit each.</param>
    /// <param name="bound">Which stand at a bound.</param>
    /// <param name="high">Which of those at the upper one.</param>
    public double[]? Solve(int free, int bound, int high)
    {
        double[] values = points.Now();
        var at = new List<int>();
        for (int i = 0; i < values.Length; i++)
        {
            if ((bound >> i & 1) == 1)
            {
                values[i] = ((high >> i & 1) == 1 ? points.Allowed[i].Most : points.Allowed[i].Least).Centimetres;
            }

            if ((free >> i & 1) == 1)
            {
                at.Add(i);
            }
        }

        for (int round = 0; round < MostRounds; round++)
        {
            if (points.Misses(values) is not { } misses)
            {
                return null;
            }

            if (WishPoints.AreMet(misses))
            {
                return at.TrueForAll(i => points.IsAllowed(i, values[i])) ? values : null;
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
            double[]? after = points.Misses(values);
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
}
