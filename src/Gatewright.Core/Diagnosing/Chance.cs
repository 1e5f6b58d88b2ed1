using System.Globalization;

namespace Gatewright.Core.Diagnosing;

/// <summary>Chances that people may set.</summary>
internal static class Chance
{
    /// <summary>A chance as it is, from 0 to 1.</summary>
    /// <exception cref="ArgumentException">It is not one.</exception>
    public static double Checked(double value, string name) => value is >= 0 and <= 1
        ? value
        : throw new ArgumentException(Message(name, value, "from 0 to 1"));

    /// <summary>ln (p/(1 − p)); of 0, −∞: the story cannot be.</summary>
    /// <exception cref="ArgumentException">It is not from 0 to below 1: no evidence could speak against a chance of 1.</exception>
    public static double LogOdds(double value, string name) => value is >= 0 and < 1
        ? Math.Log(value / (1 - value))
        : throw new ArgumentException(Message(name, value, "from 0 to below 1"));

    private static string Message(string name, double value, string range) => string.Create(
        CultureInfo.InvariantCulture, $"The chance of {name} is {value}: it must lie {range}.");
}
