using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Oars;

/// <summary>An oar that comes to a gate, from wherever it is rowed now.</summary>
/// <param name="Oar">The oar.</param>
/// <param name="Gate">The gate of the boat that it is given to.</param>
public sealed record GivenOar(OarView Oar, GatePlace Gate);

/// <summary>
/// Oars given to the gates of a boat, as a difference from what is on record: only what changes is recorded, so that of an oar that stays
/// where it is the day and whoever put it there stay too.
/// </summary>
/// <param name="Boat">The boat's key.</param>
/// <param name="Given">The oars that come from another place, from the bow.</param>
/// <param name="Freed">The oars that so far were at one of those gates, and are given to none: the boat keeps them without a place.</param>
public sealed record OarGiving(string Boat, IReadOnlyList<GivenOar> Given, IReadOnlyList<OarView> Freed)
{
    /// <summary>What giving oars so changes.</summary>
    /// <param name="oars">The club's oars.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="gates">The boat's gates.</param>
    /// <param name="seating">Which oar goes where; gates it does not name are left as they are.</param>
    public static OarGiving Of(OarsView oars, string boat, IReadOnlyList<GatePlace> gates, OarSeating seating)
    {
        ArgumentNullException.ThrowIfNull(oars);
        ArgumentNullException.ThrowIfNull(gates);
        ArgumentNullException.ThrowIfNull(seating);
        var given = new List<GivenOar>();
        foreach (SeatedOar seat in seating.Seats)
        {
            if (oars.Oar(seat.Oar.Key) is { } oar && (oar.Boat != boat || oar.Seat != seat.Gate.Seat))
            {
                given.Add(new(oar, seat.Gate));
            }
        }

        var taken = seating.Seats.Select(s => s.Gate).ToHashSet();
        var seated = seating.Seats.Select(s => s.Oar.Key).ToHashSet();
        return new(boat, given, [.. oars.InBoat(boat).Where(o => !seated.Contains(o.Key)
            && o.Seat is { } at && GateOfOar.Of(at, o.Side, gates) is { } gate && taken.Contains(gate))]);
    }

    /// <summary>
    /// What goes on record. Of an oar that is given boat and seat together, though only one of them may change: what somebody else says of it
    /// meanwhile would else be mixed with this.
    /// </summary>
    public IReadOnlyList<Fact> Facts => [
        .. Given.Select(g => Set(g.Oar, ("boat", Boat), ("seat", g.Gate.Seat.ToString(CultureInfo.InvariantCulture)))),
        .. Freed.Select(o => Set(o, ("seat", null))),
    ];

    private static ThingSet Set(OarView oar, params (string Field, string? Value)[] fields) =>
        new(Things.Oar, oar.Key, fields.ToDictionary(f => f.Field, f => f.Value));
}
