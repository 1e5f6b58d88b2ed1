using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Journal.Keeping;

/// <summary>The numbers of a standard as fields of a thing: what they are called, and whether they go together.</summary>
public static class StandardFields
{
    /// <summary>Degrees either way: beyond, no limit limits anything.</summary>
    public const decimal Most = 30;

    /// <summary>The most a gate may lose from catch to finish.</summary>
    public const string LargestDrop = "largest-drop";

    /// <summary>The most that two gates of one boat may differ at one station.</summary>
    public const string LargestRange = "largest-range";

    /// <summary>All of them: at each station the lowest, the highest and the floor, then drop and range.</summary>
    public static IReadOnlyList<string> All { get; } =
        [.. Stations.All.SelectMany(s => new[] { Lowest(s), Highest(s), Floor(s) }), LargestDrop, LargestRange];

    /// <summary>The field of the lowest good pitch at a station.</summary>
    public static string Lowest(Station station) => $"{station.Word()}-lowest";

    /// <summary>The field of the highest good pitch at a station.</summary>
    public static string Highest(Station station) => $"{station.Word()}-highest";

    /// <summary>The field of the pitch at a station below which the blade may dive.</summary>
    public static string Floor(Station station) => $"{station.Word()}-floor";

    /// <summary>A standard's number, degrees.</summary>
    /// <exception cref="ArgumentException">There is no such field.</exception>
    public static decimal Value(Standard standard, string field)
    {
        ArgumentNullException.ThrowIfNull(standard);
        foreach (Station station in Stations.All)
        {
            StationLimits limits = standard.At(station);
            if (field == Lowest(station))
            {
                return (decimal)limits.Lowest.Degrees;
            }

            if (field == Highest(station))
            {
                return (decimal)limits.Highest.Degrees;
            }

            if (field == Floor(station))
            {
                return (decimal)limits.Floor.Degrees;
            }
        }

        return field switch
        {
            LargestDrop => (decimal)standard.LargestDrop.Degrees,
            LargestRange => (decimal)standard.LargestRange.Degrees,
            _ => throw new ArgumentException($"A standard has no field {field}.", nameof(field)),
        };
    }

    /// <summary>Everything that is wrong, each with the field it is wrong of.</summary>
    /// <param name="values">Degrees by field; null for what is no number.</param>
    public static IReadOnlyList<(string Field, StandardFault Fault)> Faults(IReadOnlyDictionary<string, decimal?> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var faults = new List<(string Field, StandardFault Fault)>(All
            .Where(f => !(values.GetValueOrDefault(f) is { } value && value >= Least(f) && value <= Most))
            .Select(f => (f, StandardFault.OutOfRange)));
        foreach (Station station in Stations.All)
        {
            if (values.GetValueOrDefault(Floor(station)) > values.GetValueOrDefault(Lowest(station)))
            {
                faults.Add((Floor(station), StandardFault.FloorAboveLowest));
            }

            if (values.GetValueOrDefault(Lowest(station)) > values.GetValueOrDefault(Highest(station)))
            {
                faults.Add((Lowest(station), StandardFault.LowestAboveHighest));
            }
        }

        return faults;
    }

    /// <summary>
    /// The stations whose floor is lower than the built-in one: it takes away from the margin that keeps a blade from diving,
    /// and whoever answers for safety in the club should have agreed to it.
    /// </summary>
    public static IReadOnlyList<Station> LoweredFloors(IReadOnlyDictionary<string, decimal?> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return [.. Stations.All.Where(s => values.GetValueOrDefault(Floor(s)) < Value(Standard.Club, Floor(s)))];
    }

    private static decimal Least(string field) => field is LargestDrop or LargestRange ? 0 : -Most;
}
