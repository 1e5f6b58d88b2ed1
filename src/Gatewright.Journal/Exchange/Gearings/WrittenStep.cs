using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Journal.Exchange.Gearings;

/// <summary>A change of one measure as it is written.</summary>
public static class WrittenStep
{
    private const double Most = 30;

    private static readonly RigMeasure[] Measures =
        [RigMeasure.Spread, RigMeasure.Span, RigMeasure.Inboard, RigMeasure.OarLength, RigMeasure.WorkThrough];

    /// <summary>How it is written, for whoever wrote it otherwise.</summary>
    public static string Expected { get; } = $"{Names}, = and centimetres from -30 to 30, as in spread=-1.";

    /// <summary>The measures by their words.</summary>
    internal static string Names => $"one of {string.Join(", ", Measures.Select(m => m.Word()))}";

    /// <summary>Reads <c>spread=-1</c>; null for what is no change.</summary>
    public static RigStep? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split('=', 2) is [{ } name, { } number] && Measure(name) is { } measure
            && Centimetres(number) is { } by && Math.Abs(by) <= Most
            ? new(measure, Length.FromCentimetres(by))
            : null;
    }

    /// <summary>The measure of a word that can be set; null for none.</summary>
    internal static RigMeasure? Measure(string word)
    {
        foreach (RigMeasure measure in Measures)
        {
            if (measure.Word().Equals(word.Trim(), StringComparison.OrdinalIgnoreCase))
            {
                return measure;
            }
        }

        return null;
    }

    /// <summary>A number of centimetres; null for none.</summary>
    internal static double? Centimetres(string text) => double.TryParse(
        text.Trim(), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
        ? number
        : null;
}
