using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Shed;

/// <summary>A rack with the boats on it, as the shed stands.</summary>
/// <param name="Key">The rack's key; null for boats on none.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Level">Its level as last read; null while it was not.</param>
/// <param name="Boats">The boats on it, by name.</param>
public sealed record ShedRack(string? Key, string? Title, RackLevelRead? Level, IReadOnlyList<ShedRow> Boats);

/// <summary>The order in which somebody walks past the boats: rack by rack, each in the order the club gave it.</summary>
public static class ShedOrder
{
    /// <summary>The boats in use, rack by rack; those on no rack last.</summary>
    public static IReadOnlyList<ShedRack> Of(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        var titles = new ThingTitles(club, Things.Rack);
        return [.. BoatView.All(club)
            .Where(b => !b.IsOutOfUse && b.Records.Count > 0)
            .Select(b => new ShedRow(b, BoatBerth.Of(b).Rack, null))
            .GroupBy(r => r.Rack)
            .Select(g => (Rack: g.Key, Place: Place(club, g.Key), Boats: g.OrderBy(r => r.View.Name, ByName.Order)))
            .OrderBy(g => g.Rack is null)
            .ThenBy(g => g.Place)
            .ThenBy(g => g.Rack is null ? null : titles[g.Rack], ByName.Order)
            .Select(g => new ShedRack(g.Rack, g.Rack is null ? null : titles[g.Rack], Level(club, g.Rack), [.. g.Boats]))];
    }

    private static decimal Place(Club club, string? rack) =>
        rack is not null && decimal.TryParse(new ThingView(club, Things.Rack, rack)["order"], CultureInfo.InvariantCulture, out decimal order)
            ? order
            : decimal.MaxValue;

    private static RackLevelRead? Level(Club club, string? rack) => rack is null
        ? null
        : club.About(new(Things.Rack, rack)).Where(r => r.Fact is RackLevelRead).OrderBy(Day.Of).LastOrDefault()?.Fact as RackLevelRead;
}
