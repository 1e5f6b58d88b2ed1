using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Rounds;

/// <summary>One thing to hold the gauge to on a round.</summary>
/// <param name="Item">What.</param>
/// <param name="Gate">The gate, or the gate of the oar.</param>
/// <param name="Station">The station, for a gate's face; null for everything else.</param>
public sealed record ReadingStep(ReadItem Item, GatePlace Gate, Station? Station)
{
    /// <summary>A gate's face at a station.</summary>
    public static ReadingStep Face(GatePlace gate, Station station) => new(ReadItem.Gate, gate, station);

    /// <summary>What is not a gate's face, or a face abeam.</summary>
    public static ReadingStep Of(ReadItem item, GatePlace gate) =>
        new(item, gate, item == ReadItem.Gate ? Core.Station.Abeam : null);

    /// <summary>Whether a reading was of this.</summary>
    /// <remarks>Asked of a boat's years at each tap: nothing is made for it.</remarks>
    public bool IsOf(ReadingTaken taken)
    {
        ArgumentNullException.ThrowIfNull(taken);
        return taken.Item == Item
            && taken.Seat == Gate.Seat
            && taken.Side == Gate.Side
            && (Item != ReadItem.Gate || (taken.Angle is null && (taken.Station ?? Core.Station.Abeam) == Station));
    }

    /// <summary>What a reading was of; null where a face was read between the stations.</summary>
    public static ReadingStep? Of(ReadingTaken taken)
    {
        ArgumentNullException.ThrowIfNull(taken);
        var gate = new GatePlace(taken.Seat, taken.Side);
        return taken.Item != ReadItem.Gate ? Of(taken.Item, gate)
            : taken.Angle is null ? Face(gate, taken.Station ?? Core.Station.Abeam)
            : null;
    }
}
