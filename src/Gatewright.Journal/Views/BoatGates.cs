using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>The gates of a boat, from the bow, port before starboard: the order in which they are walked past.</summary>
public static class BoatGates
{
    /// <summary>
    /// The gates of a boat. In a sweep boat only the rigging tells the sides: what was set for a seat counts, else the side
    /// on which it was last read, measured or mended, else the usual rig with stroke on port (common practice).
    /// </summary>
    /// <returns>None while the boat's class is not known.</returns>
    public static IReadOnlyList<GatePlace> Of(Club club, BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        if (boat.Class is not { } boatClass)
        {
            return [];
        }

        if (boatClass.Rowing == Rowing.Scull)
        {
            return [.. Enumerable.Range(1, boatClass.Seats).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })];
        }

        Dictionary<int, Side> seen = Seen(boat);
        return [.. Enumerable.Range(1, boatClass.Seats).Select(seat => new GatePlace(
            seat, Set(club, boat.Key, seat) ?? (seen.TryGetValue(seat, out Side side) ? side : Usual(seat, boatClass.Seats))))];
    }

    private static Side Usual(int seat, int seats) => (seats - seat) % 2 == 0 ? Side.Port : Side.Starboard;

    private static Side? Set(Club club, string boat, int seat) =>
        Sides.OfWord(new ThingView(club, Things.Seat, Things.SeatKey(boat, seat))["side"]);

    private static Dictionary<int, Side> Seen(BoatView boat)
    {
        var sides = new Dictionary<int, Side>();
        foreach (Recorded record in boat.Records)
        {
            switch (record.Fact)
            {
                case ReadingTaken reading:
                    sides[reading.Seat] = reading.Side;
                    break;
                case MeasureTaken { Side: { } side } measure:
                    sides[measure.Seat] = side;
                    break;
                case GateMended mended:
                    sides[mended.Seat] = mended.Side;
                    break;
            }
        }

        return sides;
    }
}
