using System.Globalization;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A note or a photo of a boat or of one of its gates.</summary>
/// <param name="Record">The entry: what, who, when.</param>
/// <param name="Gate">The gate; null for the boat, or a seat of it.</param>
public sealed record Remark(Recorded Record, GatePlace? Gate);

/// <summary>What people noted and photographed on a boat: on the boat itself, its seats and its gates.</summary>
public static class BoatRemarks
{
    /// <summary>All that holds, newest first.</summary>
    public static IReadOnlyList<Remark> Of(Club club, string boat)
    {
        ArgumentNullException.ThrowIfNull(club);
        return [.. Places(club, boat).Append(Subject.Boat(boat))
            .SelectMany(place => club.About(place).Where(r => r.Fact is Noted or PhotoTaken).Select(r => new Remark(r, GateOf(place))))
            .OrderByDescending(remark => remark.Record, RecordedOrder.Instance)];
    }

    /// <summary>The shelves of a boat's seats and gates, whose keys begin with the boat's.</summary>
    internal static IEnumerable<Subject> Places(Club club, string boat) => club.Subjects.Where(s =>
        s.Thing is Things.Gate or Things.Seat && s.Key.StartsWith(boat + "/", StringComparison.Ordinal));

    /// <summary>The gate that a shelf is of: "teal/3/port" → seat 3 port; null for any other shelf.</summary>
    public static GatePlace? GateOf(Subject place)
    {
        string[] parts = place.Key.Split('/');
        return place.Thing == Things.Gate && parts is [.., { } seat, "port" or "starboard"]
            && int.TryParse(seat, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? new(number, parts[^1] == "port" ? Side.Port : Side.Starboard)
            : null;
    }
}
