using System.Globalization;

namespace Gatewright.App.Round;

/// <summary>Degrees as they were read or tapped, as people of this language write them.</summary>
internal static class ShownDegrees
{
    /// <summary>"4.5", "−0.5": one decimal, two where two were typed.</summary>
    public static string Of(decimal degrees)
    {
        string size = Math.Abs(degrees).ToString("0.0#", CultureInfo.CurrentCulture);
        return degrees < 0 ? "\u2212" + size : size;
    }

    /// <summary>The same for a machine: "-0.5".</summary>
    public static string Plain(decimal degrees) => degrees.ToString("0.0#", CultureInfo.InvariantCulture);
}
