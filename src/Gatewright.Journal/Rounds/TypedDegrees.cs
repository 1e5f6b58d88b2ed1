using System.Globalization;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Rounds;

/// <summary>Degrees as somebody types them: with a comma or a point, and any minus a keyboard has.</summary>
public static class TypedDegrees
{
    private const int MostDecimals = 2;

    /// <summary>The value; null for what is not a number, or has more than two decimals.</summary>
    public static decimal? Parse(string? text)
    {
        string plain = (text ?? string.Empty).Trim().Replace('\u2212', '-').Replace('\u2013', '-').Replace(',', '.').TrimEnd('\u00b0');
        return decimal.TryParse(
            plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            && value.Scale <= MostDecimals
            ? value
            : null;
    }

    /// <summary>How many degrees either way can be recorded of an item.</summary>
    public static decimal Most(ReadItem item) => item == ReadItem.Gate ? ReadingsFormat.MostOfAGate : ReadingsFormat.MostOfAnother;
}
