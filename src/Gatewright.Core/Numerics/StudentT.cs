namespace Gatewright.Core.Numerics;

/// <summary>Student's t distribution.</summary>
public static class StudentT
{
    private const double Smallest = 1e-300;
    private const int MostTerms = 10_000;

    /// <summary>The probability of lying below t with ν degrees of freedom: 2.776445 with 4 → 0.975.</summary>
    /// <remarks>½ I(ν/(ν + t²); ν/2, ½) is what lies beyond |t| (Abramowitz and Stegun, 26.7.1 and 26.5.27).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">ν is not positive and finite.</exception>
    public static double Cdf(double t, double freedom)
    {
        Check(freedom);
        if (double.IsNaN(t))
        {
            return double.NaN;
        }

        double beyond = Beyond(Math.Abs(t), freedom);
        return t > 0 ? 1 - beyond : beyond;
    }

    /// <summary>The t below which lies a probability: 0.975 with 4 → 2.776445.</summary>
    /// <remarks>
    /// Bisected on the tail, which falls without a break: slow beside Newton and never lost. Good to 1e-10 of itself for
    /// tails from 1e-12 on.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1, or ν not positive and finite.</exception>
    public static double Quantile(double probability, double freedom)
    {
        Check(freedom);
        if (!(probability > 0 && probability < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability must lie between 0 and 1.");
        }

        double tail = Math.Min(probability, 1 - probability);
        double low = 0;
        double high = 1;
        while (Beyond(high, freedom) > tail)
        {
            (low, high) = (high, 2 * high);
        }

        while (high - low > 1e-12 * high)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = Beyond(middle, freedom) > tail ? (middle, high) : (low, middle);
        }

        double t = 0.5 * (low + high);
        return probability < 0.5 ? -t : probability > 0.5 ? t : 0;
    }

    /// <summary>Half of what lies beyond |t| both ways.</summary>
    private static double Beyond(double t, double freedom) =>
        double.IsPositiveInfinity(t) ? 0 : 0.5 * IncompleteBeta(freedom / 2, 0.5, freedom, t * t);

    /// <summary>I(x; a, b) with x = p/(p + q), each of which is given so that neither loses digits to the other.</summary>
    private static double IncompleteBeta(double a, double b, double p, double q)
    {
        double x = p / (p + q);
        double y = q / (p + q);
        if (y == 0)
        {
            return 1;
        }

        double front = Math.Exp((a * Math.Log(x)) + (b * Math.Log(y)) + LogGamma(a + b) - LogGamma(a) - LogGamma(b));
        return x < (a + 1) / (a + b + 2)
            ? front * Fraction(a, b, x) / a
            : 1 - (front * Fraction(b, a, y) / b);
    }

    /// <summary>The continued fraction of the incomplete beta function (Abramowitz and Stegun, 26.5.8), by Lentz's way.</summary>
    private static double Fraction(double a, double b, double x)
    {
        double c = 1;
        double d = 1 / Away(1 - ((a + b) * x / (a + 1)));
        double result = d;
        for (int m = 1; m < MostTerms; m++)
        {
            Step(m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m))));
            double last = Step(-(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1)));
            if (Math.Abs(last - 1) < 1e-16)
            {
                break;
            }
        }

        return result;

        double Step(double term)
        {
            d = 1 / Away(1 + (term * d));
            c = Away(1 + (term / c));
            result *= c * d;
            return c * d;
        }
    }

    private static double Away(double value) => Math.Abs(value) < Smallest ? Smallest : value;

    /// <summary>ln Γ by Stirling's series (Abramowitz and Stegun, 6.1.41), carried up to 10 first: what is left out is under 1e-16.</summary>
    private static double LogGamma(double x)
    {
        double product = 1;
        for (; x < 10; x++)
        {
            product *= x;
        }

        double square = 1 / (x * x);
        double series = ((((((1.0 / 1188 * square) - (1.0 / 1680)) * square) + (1.0 / 1260)) * square - (1.0 / 360)) * square + (1.0 / 12)) / x;
        return ((x - 0.5) * Math.Log(x)) - x + (0.5 * Math.Log(2 * Math.PI)) + series - Math.Log(product);
    }

    private static void Check(double freedom)
    {
        if (!(freedom > 0 && double.IsFinite(freedom)))
        {
            throw new ArgumentOutOfRangeException(nameof(freedom), freedom, "Degrees of freedom must be above 0.");
        }
    }
}
