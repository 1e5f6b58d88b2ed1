using System.Globalization;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>Finds a boat by what somebody types of it, or what a camera reads off its label.</summary>
public static class BoatSearch
{
    /// <summary>Whether a boat is meant: part of its name, its class, or the code on its label.</summary>
    public static bool IsMeant(BoatView boat, string sought)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(sought);
        string text = sought.Trim();
        return text.Length == 0
            || boat.Name.Contains(text, StringComparison.OrdinalIgnoreCase)
            || text.Equals(boat.Class?.Name, StringComparison.OrdinalIgnoreCase)
            || HasCode(boat, text);
    }

    /// <summary>The boat whose label, or that of one of its seats, carries a code: the code that was set for it, or its key; null for none.</summary>
    public static BoatView? ByCode(IEnumerable<BoatView> boats, string code)
    {
        ArgumentNullException.ThrowIfNull(boats);
        ArgumentNullException.ThrowIfNull(code);
        return boats.FirstOrDefault(b => HasCode(b, code.Trim()));
    }

    // A key is typed in small letters or capitals, as a phone writes them; a label may carry an address that ends in the boat's key, so that any phone's camera leads to the boat.
    private static bool HasCode(BoatView boat, string code) =>
        code.Equals(boat.Properties["code"], StringComparison.OrdinalIgnoreCase)
        || code.Equals(boat.Key, StringComparison.OrdinalIgnoreCase)
        || code.EndsWith("/boat/" + Uri.EscapeDataString(boat.Key), StringComparison.Ordinal)
        || IsOfSeat(code, boat.Key);

    // A seat's label has the boat's key, a slash and its number, or the address of one of its gates.
    private static bool IsOfSeat(string code, string key) =>
        (code.StartsWith(key + "/", StringComparison.OrdinalIgnoreCase) && int.TryParse(code.AsSpan(key.Length + 1), NumberStyles.None, CultureInfo.InvariantCulture, out _))
        || code.Contains("/boat/" + Uri.EscapeDataString(key) + "/gate/", StringComparison.Ordinal);
}
