using System.Globalization;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A rack of the club.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Order">Its place on the walk past the racks; null while it has none, then it comes last.</param>
/// <param name="Bed">Whether a boat takes the rack's level or sinks into it.</param>
/// <param name="Levels">Its level as it was read, the oldest day first; the last counts today.</param>
public sealed record RackView(string Key, string Title, decimal? Order, Bedding Bed, IReadOnlyList<Recorded> Levels)
{
    /// <summary>Its level as it counts today; null while nobody has read it.</summary>
    public RackLevelRead? Level => Levels is [.., { Fact: RackLevelRead level }] ? level : null;

    /// <summary>A rack by its key.</summary>
    public static RackView Of(Club club, string key) => Of(club, key, new(club, Things.Rack));

    /// <summary>All of them, in the order of the walk.</summary>
    public static IReadOnlyList<RackView> All(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        var titles = new ThingTitles(club, Things.Rack);
        return [.. club.Subjects.Where(s => s.Thing == Things.Rack)
            .Select(s => Of(club, s.Key, titles))
            .OrderBy(r => r.Order ?? decimal.MaxValue)
            .ThenBy(r => r.Title, StringComparer.OrdinalIgnoreCase).ThenBy(r => r.Key, StringComparer.Ordinal)];
    }

    private static RackView Of(Club club, string key, ThingTitles titles)
    {
        var thing = new ThingView(club, Things.Rack, key);
        return new(
            key,
            titles[key],
            decimal.TryParse(thing["order"], CultureInfo.InvariantCulture, out decimal order) ? order : null,
            thing["bed"] == "soft" ? Bedding.Soft : Bedding.Firm,
            [.. club.About(new(Things.Rack, key)).Where(r => r.Fact is RackLevelRead).OrderBy(Day.Of)]);
    }
}
