using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>Finds the rack or the oar whose label is meant, and so the boats that lie on it or are rowed with it.</summary>
/// <param name="Thing">What carries the label: <see cref="Things.Rack"/> or <see cref="Things.Oar"/>.</param>
/// <param name="Key">Its key.</param>
/// <param name="Title">What it is called.</param>
public sealed record LabelSearch(string Thing, string Key, string Title)
{
    /// <summary>
    /// The rack or oar of a code as it stands on its label, small letters or capitals; null for none. Of several it is a rack before an
    /// oar, and the first by its key.
    /// </summary>
    public static LabelSearch? Of(Club club, string code)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(code);
        string text = code.Trim();
        Subject found = text.Length == 0 ? default : club.Subjects
            .Where(s => s is { Key.Length: > 0, Thing: Things.Rack or Things.Oar } && IsOf(club, s, text))
            .OrderBy(s => s.Thing == Things.Oar).ThenBy(s => s.Key, StringComparer.Ordinal)
            .FirstOrDefault();
        return found == default ? null : new(found.Thing, found.Key, new ThingTitles(club, found.Thing)[found.Key]);
    }

    /// <summary>The same of what somebody is typing: a letter by itself is how a boat's name begins, unless it stands as the rack or oar is called, or no boat is meant by it.</summary>
    public static LabelSearch? Typed(Club club, string sought, IEnumerable<BoatView> boats)
    {
        ArgumentNullException.ThrowIfNull(boats);
        LabelSearch? found = Of(club, sought);
        string text = sought.Trim();
        return text.Length == 1 && text != found?.Title && boats.Any(b => BoatSearch.IsMeant(b, text)) ? null : found;
    }

    /// <summary>Whether a boat lies on the rack, or is rowed with the oar.</summary>
    public bool IsAt(Club club, BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return Thing == Things.Rack
            ? BoatBerth.Of(boat).Rack == Key
            : new ThingView(club, Things.Oar, Key)["boat"] == boat.Key;
    }

    // A label carries the code that was set for its rack, else the address of the thing's page, else its key.
    private static bool IsOf(Club club, Subject subject, string text) =>
        text.Equals(subject.Key, StringComparison.OrdinalIgnoreCase)
        || text.EndsWith($"/{(subject.Thing == Things.Rack ? "racks" : "oars")}/{Uri.EscapeDataString(subject.Key)}", StringComparison.Ordinal)
        || (subject.Thing == Things.Rack && text.Equals(new ThingView(club, Things.Rack, subject.Key)["code"], StringComparison.OrdinalIgnoreCase));
}
