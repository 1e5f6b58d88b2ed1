using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>A standard and what its figures mean.</summary>
internal static class StandardWords
{
    /// <summary>What the boats were judged by.</summary>
    public static string Limits(Standard standard) =>
        $"Judged by the standard {standard.Name}: "
        + string.Join(", ", Stations.All.Select(station => Station(station, standard.At(station))))
        + $"; at most {Figures.Short(standard.LargestDrop)}° lost from catch to finish "
        + $"and {Figures.Short(standard.LargestRange)}° between two gates at one station. Under the floor "
        + $"({string.Join(", ", Stations.All.Select(s => $"{s.Word()} {Figures.Short(standard.At(s).Floor.Angle)}°"))}) "
        + "the blade may dive.";

    /// <summary>What the boats of a shed were judged by, first the shed's own standard, then those that only some boats have.</summary>
    public static IEnumerable<string> Limits(ShedCheck shed) => shed.Boats
        .GroupBy(boat => boat.Verdict.Standard)
        .Where(group => group.Key != shed.Standard)
        .Select(group => $"{string.Join(", ", group.Select(boat => boat.Verdict.Boat))}: {Limits(group.Key)}")
        .Prepend(Limits(shed.Standard));

    /// <summary>What stands behind ±.</summary>
    public const string PlusMinus =
        "± is one standard uncertainty: of many such readings about two in three lie within it of the true pitch. "
        + "Pitch is given on a level boat, corrected for what is known of level and gauge.";

    /// <summary>What figures in brackets are.</summary>
    public const string Brackets =
        "Figures in brackets were not read: they are what the boat's other readings let one expect there.";

    private static string Station(Station station, StationLimits limits) =>
        $"{station.Word()} {Figures.Short(limits.Lowest.Angle)}° to {Figures.Short(limits.Highest.Angle)}°";
}
