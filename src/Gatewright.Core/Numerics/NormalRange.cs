namespace Gatewright.Core.Numerics;

/// <summary>The range of independent standard normal numbers, from the least to the largest: what several readings spread over by chance.</summary>
public static class NormalRange
{
    // Beyond 8 the density is under 1e-14, and steps of 0.05 leave Simpson's rule an error under 1e-9 for up to 100 numbers.
    private const double To = 8;
    private const int Steps = 320;

    // Of 2 to 20 numbers, by Quantile: it takes milliseconds, and a phone asks for these at each tap.
    private static ReadOnlySpan<double> Usual =>
    [
        2.771807649, 3.314493156, 3.633159575, 3.857655511, 4.030092054, 4.169554155, 4.286309409, 4.386509115, 4.474124222, 4.551863584,
        4.621655472, 4.684919848, 4.742731708, 4.795923860, 4.845154184, 4.890951125, 4.933745358, 4.973892348, 5.011688794,
    ];

    /// <summary>The width that 95 in 100 ranges keep within.</summary>
    /// <param name="count">How many numbers; 2 or more.</param>
    public static double Within95(int count) => count - 2 is >= 0 and int at && at < Usual.Length ? Usual[at] : Quantile(0.95, count);

    /// <summary>The probability that the range is at most as wide: n ∫ φ(x) (Φ(x + w) − Φ(x))ⁿ⁻¹ dx, with x the least of them.</summary>
    /// <param name="width">How wide; 0 or more.</param>
    /// <param name="count">How many numbers; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two numbers have no range.</exception>
    public static double Cdf(double width, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        double step = 2 * To / Steps;
        double sum = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double x = -To + (i * step);
            double weight = i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Normal.Density(x) * Math.Pow(Normal.Cdf(x + width) - Normal.Cdf(x), count - 1);
        }

        return Math.Min(1, count * sum * step / 3);
    }

    /// <summary>The width that the range exceeds with a probability of 1 − <paramref name="probability"/>, within 1e-9.</summary>
    /// <param name="probability">Above 0 and below 1.</param>
    /// <param name="count">How many numbers; 2 or more.</param>
    public static double Quantile(double probability, int count)
    {
        (double below, double above) = (0, 2 * To);
        while (above - below > 1e-9)
        {
            double middle = (below + above) / 2;
            (below, above) = Cdf(middle, count) < probability ? (middle, above) : (below, middle);
        }

        return (below + above) / 2;
    }
}
