using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Bench.Boats;

/// <summary>The same eights as lines of CSV, in the words a club's spreadsheet would have.</summary>
internal static class EightsCsv
{
    public static IEnumerable<string> Lines(int boats) =>
        Enumerable.Range(1, boats)
            .SelectMany(number => Eights.Read(number).Select(reading => Line(number, reading)))
            .Prepend("boat,class,seat,side,item,at,reading,lie,gauge");

    private static string Line(int number, Reading reading) => string.Create(
        CultureInfo.InvariantCulture,
        $"Eight {number},8+,{reading.Gate.Seat},{reading.Gate.Side.Word()},gate,{reading.At},{reading.Value.Degrees:0.0},"
            + $"{reading.Lie.Lie.Word()},{reading.Gauge.Name}");
}
