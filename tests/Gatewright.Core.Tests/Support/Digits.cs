using System.Globalization;

namespace Gatewright.Core.Tests.Support;

/// <summary>
/// The log relative error, by which results on NIST's reference data sets are reported: the number of leading digits
/// in which a computed value agrees with a certified one.
/// </summary>
internal static class Digits
{
    /// <summary>The certified values carry 15 digits: more cannot be agreed upon.</summary>
    private const double Most = 15;

    /// <summary>−log₁₀(|x − c| / |c|), and −log₁₀ |x| where the certified value is 0.</summary>
    public static double Agreed(double certified, double computed)
    {
        double error = certified == 0 ? Math.Abs(computed) : Math.Abs(computed - certified) / Math.Abs(certified);
        return double.IsNaN(error) ? double.NegativeInfinity : Math.Min(Most, -Math.Log10(error));
    }

    public static void AtLeast(double digits, double certified, double computed, string what)
    {
        double agreed = Agreed(certified, computed);
        Assert.True(agreed >= digits, string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: certified {certified:R}, computed {computed:R}, {agreed:0.0} digits agree, {digits:0.0} wanted"));
    }
}
