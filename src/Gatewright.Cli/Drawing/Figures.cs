using System.Globalization;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.Drawing;

/// <summary>Numbers as they are shown, in the invariant culture.</summary>
internal static class Figures
{
    /// <summary>The step in which degrees are shown.</summary>
    public const double ShownStep = 0.1;

    /// <summary>"4.0", "-0.5"; never "-0.0".</summary>
    public static string Degrees(double degrees, int decimals = 1)
    {
        double rounded = Math.Round(degrees, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString($"F{decimals}", CultureInfo.InvariantCulture);
    }

    /// <summary>As few decimals as the value has: "3", "1.5".</summary>
    public static string Short(Angle angle) => angle.Degrees.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>"4.0±0.4", for a drawing.</summary>
    public static string Tight(Estimate estimate) => $"{Degrees(estimate.Value.Degrees)}±{Degrees(estimate.U.Degrees)}";

    /// <summary>"4.0° ± 0.4", for a sentence.</summary>
    public static string Loose(Estimate estimate) => $"{Degrees(estimate.Value.Degrees)}° ± {Degrees(estimate.U.Degrees)}";

    /// <summary>"71 %". Never 0 or 100: a probability from a model is not a certainty.</summary>
    public static string Percent(double probability) =>
        probability > 0.99 ? "over 99 %"
        : probability < 0.01 ? "under 1 %"
        : (100 * probability).ToString("0", CultureInfo.InvariantCulture) + " %";

    /// <summary>"1 boat", "3 boats".</summary>
    public static string Count(int count, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? string.Empty : "s")}");
}
