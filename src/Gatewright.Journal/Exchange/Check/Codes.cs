using System.Globalization;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>The words that stand in the file for what Core names by type.</summary>
internal static class Codes
{
    public static string Of(ReasonKind kind) => kind switch
    {
        ReasonKind.BelowLimit => "below-limit",
        ReasonKind.AboveLimit => "above-limit",
        ReasonKind.Floor => "floor",
        ReasonKind.Drop => "drop",
        ReasonKind.Repeats => "repeats",
        ReasonKind.Changed => "changed",
        _ => "range",
    };

    public static string Of(HullLevel level) => level switch
    {
        HullLevel.Read => "read",
        HullLevel.BubbleCentred => "bubble-centred",
        HullLevel.OfRack => "rack",
        _ => "by-eye",
    };

    public static string? Of(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>As a file of readings writes it: a station's word, or degrees from abeam.</summary>
    public static string Of(StrokePoint at) =>
        at.Station?.Word() ?? at.Angle.Degrees.ToString("0.####", CultureInfo.InvariantCulture);
}
