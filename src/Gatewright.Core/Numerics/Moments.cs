namespace Gatewright.Core.Numerics;

/// <summary>Mean and standard deviation of repeated observations.</summary>
/// <param name="Count">How many.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Sd">Their standard deviation, n − 1 in the divisor (JCGM 100:2008, 4.2.2); NaN for one alone.</param>
public readonly record struct Moments(int Count, double Mean, double Sd)
{
    /// <summary>The moments of some observations.</summary>
    /// <remarks>
    /// In two passes, the second about the first's mean and corrected by what that mean was off: a one-pass sum of
    /// squares loses every digit on NIST's NumAcc4 (10000000.2 ± 0.1).
    /// </remarks>
    /// <exception cref="ArgumentException">There are none.</exception>
    public static Moments Of(ReadOnlySpan<double> values)
    {
        if (values.IsEmpty)
        {
            throw new ArgumentException("No observations have no mean.", nameof(values));
        }

        double first = Sum(values, 0) / values.Length;
        double off = Sum(values, first) / values.Length;
        double mean = first + off;
        double squares = 0;
        foreach (double value in values)
        {
            squares += (value - mean) * (value - mean);
        }

        return new(values.Length, mean, values.Length == 1 ? double.NaN : Math.Sqrt(squares / (values.Length - 1)));
    }

    private static double Sum(ReadOnlySpan<double> values, double about)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value - about;
        }

        return sum;
    }
}
