using System.Globalization;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Drawing;

/// <summary>Numbers as they are drawn: in English, whatever the machine is set to.</summary>
internal static class Figures
{
    /// <summary>"4.0", "-0.5"; never "-0.0".</summary>
    public static string Degrees(double degrees, int decimals = 1) => English.Figures.Degrees(degrees, decimals);

    /// <summary>As few decimals as the value has: "3", "1.5".</summary>
    public static string Short(Angle angle) => English.Figures.Brief(angle);

    /// <summary>"4.0±0.4", for a drawing.</summary>
    public static string Tight(Estimate estimate) => $"{Degrees(estimate.Value.Degrees)}±{Degrees(estimate.U.Degrees)}";

    /// <summary>"71 %". Never 0 or 100: a probability from a model is not a certainty.</summary>
    public static string Percent(double probability) => English.Figures.Percent(probability);

    /// <summary>"1 boat", "3 boats".</summary>
    public static string Count(int count, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? string.Empty : "s")}");
}
