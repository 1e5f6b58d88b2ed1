using Gatewright.Core.Geometry;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>
/// How many decimals the format writes: enough for any use of a pitch, few enough that two machines whose last bits
/// differ write the same file.
/// </summary>
internal static class Rounded
{
    /// <summary>Degrees to 4 decimals.</summary>
    public static double Degrees(Angle angle) => To(angle.Degrees, 4);

    /// <summary>A figure of the rig, centimetres or degrees, to 4 decimals.</summary>
    public static double Figure(double value) => To(value, 4);

    /// <summary>A probability to 6 decimals.</summary>
    public static double Probability(double probability) => To(probability, 6);

    /// <summary>Adding 0 turns −0 into 0, which is how a reader expects to see it.</summary>
    private static double To(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
}
