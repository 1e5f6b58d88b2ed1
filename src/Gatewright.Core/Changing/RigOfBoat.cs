using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>A boat's rig as a value: what it is at each place, which rigger and which oar is where.</summary>
/// <param name="Name">What it is called: the boat, and the day where it is not today's.</param>
/// <param name="Class">The class.</param>
/// <param name="Gates">Its gates, from the bow, port before starboard.</param>
/// <param name="Values">What is known of it.</param>
/// <param name="Riggers">The riggers that bear a mark.</param>
/// <param name="Oars">The oars that are known to be its own.</param>
/// <param name="Inserts">The stamp of each gate's insert, degrees, where it is known.</param>
public sealed record RigOfBoat(
    string Name,
    BoatClass Class,
    IReadOnlyList<GatePlace> Gates,
    IReadOnlyList<RigValue> Values,
    IReadOnlyList<RigMark> Riggers,
    IReadOnlyList<RigMark> Oars,
    IReadOnlyDictionary<GatePlace, double> Inserts)
{
    /// <summary>A boat of which only values are known.</summary>
    public static RigOfBoat Of(string name, BoatClass boatClass, IReadOnlyList<GatePlace> gates, IReadOnlyList<RigValue> values) =>
        new(name, boatClass, gates, values, [], [], new Dictionary<GatePlace, double>());

    /// <summary>An item at a place; null where it is not known. A sweep seat has one gate, whichever its side: what is known of the other side holds
    /// where nothing is of this one.</summary>
    public RigValue? Find(RigItem item, RigPlace place)
    {
        RigValue? ofSeat = null;
        foreach (RigValue value in Values)
        {
            if (value.Item != item || value.Place.Seat != place.Seat)
            {
                continue;
            }

            if (value.Place.Side == place.Side)
            {
                return value;
            }

            ofSeat ??= value;
        }

        return Class.Rowing == Rowing.Sweep ? ofSeat : null;
    }

    /// <summary>The mark of the rigger at a gate; null where none is known.</summary>
    public string? Rigger(GatePlace gate) => Marked(Riggers, gate);

    /// <summary>The mark of the oar at a gate; null where none is known.</summary>
    public string? Oar(GatePlace gate) => Marked(Oars, gate);

    /// <summary>The places of an item in this boat.</summary>
    public IReadOnlyList<RigPlace> Places(RigItem item)
    {
        var places = new List<RigPlace>();
        foreach (GatePlace gate in Gates)
        {
            var place = new RigPlace(gate.Seat, item.HasSide() ? gate.Side : null);
            if (places.Count == 0 || places[^1] != place)
            {
                places.Add(place);
            }
        }

        return places;
    }

    internal static string? Marked(IReadOnlyList<RigMark> marks, GatePlace gate)
    {
        foreach (RigMark mark in marks)
        {
            if (mark.At == gate)
            {
                return mark.Mark;
            }
        }

        return null;
    }
}
