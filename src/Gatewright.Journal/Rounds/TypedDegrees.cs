using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Rounds;

/// <summary>Degrees as somebody types them: with a comma or a point, and any minus a keyboard has.</summary>
public static class TypedDegrees
{
    /// <summary>The value; null for what is not a number, or has more than two decimals.</summary>
    public static decimal? Parse(string? text) => TypedNumber.Parse(text);

    /// <summary>How many degrees either way can be recorded of an item.</summary>
    public static decimal Most(ReadItem item) => item == ReadItem.Gate ? ReadingsFormat.MostOfAGate : ReadingsFormat.MostOfAnother;
}
