using System.Globalization;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Rigging;

/// <summary>A figure of the rig as somebody types it: with a comma or a point, and any minus a keyboard has.</summary>
public static class TypedMeasure
{
    private const int MostDecimals = 2;

    /// <summary>
    /// The figure; null for what is no number, has more than two decimals, or can be no such measure in that unit: "865"
    /// is no spread in centimetres.
    /// </summary>
    public static decimal? Parse(string? text, RigMeasure measure, RigUnit unit)
    {
        (double least, double most) = measure.Plausible();
        return Number(text) is { } value && unit.InOwn((double)value) >= least && unit.InOwn((double)value) <= most ? value : null;
    }

    /// <summary>A number of at most two decimals, whatever it is of; null for anything else.</summary>
    public static decimal? Number(string? text)
    {
        string plain = (text ?? string.Empty).Trim().Replace('\u2212', '-').Replace('\u2013', '-').Replace(',', '.').TrimEnd('\u00b0');
        return decimal.TryParse(
            plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            && value.Scale <= MostDecimals
            ? value
            : null;
    }
}
