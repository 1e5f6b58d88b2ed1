using System.Globalization;

namespace Gatewright.Core.Tests.Support;

/// <summary>Closeness with a stated tolerance; a failure prints everything that is needed to judge it.</summary>
internal static class Close
{
    public static void To(double expected, double actual, double tolerance, string what = "value")
    {
        // Written so that a NaN fails.
        if (!(Math.Abs(actual - expected) <= tolerance))
        {
            Assert.Fail(string.Create(
                CultureInfo.InvariantCulture,
                $"{what}: expected {expected:R}, actual {actual:R}, difference {actual - expected:G3}, tolerance {tolerance:G3}"));
        }
    }

    public static void To(IReadOnlyList<double> expected, IReadOnlyList<double> actual, double tolerance, string what = "value")
    {
        Assert.Equal(expected.Count, actual.Count);
        for (int i = 0; i < expected.Count; i++)
        {
            To(expected[i], actual[i], tolerance, string.Create(CultureInfo.InvariantCulture, $"{what} {i}"));
        }
    }
}
