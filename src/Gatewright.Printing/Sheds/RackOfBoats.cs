using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Printing.Sheds;

/// <summary>A rack with the boats on it, as somebody walks past them.</summary>
/// <param name="Title">What the rack is called; null for boats on none.</param>
/// <param name="Boats">Its boats, by name.</param>
internal sealed record RackOfBoats(string? Title, IReadOnlyList<BoatStanding> Boats)
{
    /// <summary>Boats by their racks, in the order of the walk; those on no rack last.</summary>
    public static IReadOnlyList<RackOfBoats> Of(Club club, IEnumerable<BoatStanding> boats)
    {
        List<RackView> racks = [.. RackView.All(club)];
        ILookup<string?, BoatStanding> byRack = boats
            .OrderBy(b => b.View.Name, StringComparer.OrdinalIgnoreCase)
            .ToLookup(b => BoatBerth.Of(b.View).Rack);
        IEnumerable<RackOfBoats> known = racks.Where(r => byRack.Contains(r.Key)).Select(r => new RackOfBoats(r.Title, [.. byRack[r.Key]]));

        // A boat may name a rack of which nobody has said anything yet.
        IEnumerable<RackOfBoats> others = byRack
            .Where(g => g.Key is not null && racks.All(r => r.Key != g.Key))
            .OrderBy(g => g.Key, StringComparer.OrdinalIgnoreCase)
            .Select(g => new RackOfBoats(g.Key, [.. g]));
        IEnumerable<RackOfBoats> none = byRack.Contains(null) ? [new RackOfBoats(null, [.. byRack[null]])] : [];
        return [.. known, .. others, .. none];
    }
}
