namespace Gatewright.Core.Numerics;

/// <summary>A step of the search for outliers: the value that lies farthest out, and whether that is farther than chance would have it.</summary>
/// <param name="Index">Which observation.</param>
/// <param name="Ratio">How many standard deviations it lies from the mean of those not yet set aside.</param>
/// <param name="Critical">From here on it is an outlier.</param>
public readonly record struct OutlierStep(int Index, double Ratio, double Critical);

/// <summary>Outliers among observations of one thing: Grubbs' test, and the generalised ESD test that repeats it.</summary>
/// <remarks>
/// Rosner, Technometrics 25 (1983), as in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1 and 1.3.5.17.3.
/// Both take the observations to be normal but for the outliers. Neither changes when all are shifted or scaled.
/// </remarks>
public static class Outliers
{
    /// <summary>The fewest observations among which a test is worth anything: with six or fewer it marks too many.</summary>
    public const int Fewest = 7;

    /// <summary>From so many on the generalised test keeps its level, as its author found by simulation; below it is approximate.</summary>
    public const int Exact = 15;

    /// <summary>
    /// The outliers, the farthest first: of the steps, all up to the last whose ratio passes its critical value.
    /// </summary>
    public static IReadOnlyList<int> Find(IReadOnlyList<double> values, int most, double level = 0.05)
    {
        IReadOnlyList<OutlierStep> steps = Steps(values, most, level);
        int last = 0;
        for (int i = 0; i < steps.Count; i++)
        {
            if (steps[i].Ratio > steps[i].Critical)
            {
                last = i + 1;
            }
        }

        int[] found = new int[last];
        for (int i = 0; i < last; i++)
        {
            found[i] = steps[i].Index;
        }

        return found;
    }

    /// <summary>The steps of the generalised ESD test; the first is Grubbs' two-sided test.</summary>
    /// <param name="values">The observations; at least three.</param>
    /// <param name="most">How many outliers there may be, 1 to two fewer than the observations.</param>
    /// <param name="level">The chance of finding one where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few for so many outliers, or the level is not between 0 and 1.</exception>
    public static IReadOnlyList<OutlierStep> Steps(IReadOnlyList<double> values, int most, double level = 0.05)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (most < 1 || most > values.Count - 2)
        {
            throw new ArgumentOutOfRangeException(nameof(most), most, "There must be 1 to two fewer outliers than observations.");
        }

        var left = new List<int>(values.Count);
        for (int i = 0; i < values.Count; i++)
        {
            left.Add(i);
        }

        var steps = new OutlierStep[most];
        for (int step = 0; step < most; step++)
        {
            (int place, double ratio) = Farthest(values, left);
            steps[step] = new(left[place], ratio, Critical(left.Count, level));
            left.RemoveAt(place);
        }

        return steps;
    }

    /// <summary>
    /// The critical value among n observations: (n − 1) t / √(n (n − 2 + t²)), t with n − 2 degrees of freedom at
    /// level/(2 n). Among 54 at 0.05 → 3.159.
    /// </summary>
    public static double Critical(int count, double level = 0.05)
    {
        double t = StudentT.Quantile(1 - (level / (2 * count)), count - 2);
        return (count - 1) * t / Math.Sqrt(count * (count - 2 + (t * t)));
    }

    /// <summary>Of two that lie as far out, the first; where all are alike none lies out at all.</summary>
    private static (int Place, double Ratio) Farthest(IReadOnlyList<double> values, List<int> left)
    {
        double[] here = new double[left.Count];
        for (int i = 0; i < here.Length; i++)
        {
            here[i] = values[left[i]];
        }

        Moments moments = Moments.Of(here);
        int place = 0;
        double far = 0;
        for (int i = 0; i < here.Length; i++)
        {
            if (Math.Abs(here[i] - moments.Mean) > far)
            {
                (place, far) = (i, Math.Abs(here[i] - moments.Mean));
            }
        }

        return (place, moments.Sd > 0 ? far / moments.Sd : 0);
    }
}
