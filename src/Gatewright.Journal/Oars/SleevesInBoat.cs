using Gatewright.Core;
using Gatewright.Core.Oars;

namespace Gatewright.Journal.Oars;

/// <summary>The sleeves of the oars that a boat is rowed with, gate by gate.</summary>
public static class SleevesInBoat
{
    /// <summary>
    /// The sleeve of the oar in a gate; null where no oar of the boat is at that seat and side, where its sleeve was never read,
    /// and where several are: which of them is rowed nobody said.
    /// </summary>
    /// <param name="oars">The club's oars.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="gates">The boat's gates.</param>
    public static Func<GatePlace, OarFigure?> Of(OarsView oars, string boat, IReadOnlyList<GatePlace> gates)
    {
        ArgumentNullException.ThrowIfNull(oars);
        ArgumentNullException.ThrowIfNull(gates);
        var found = new Dictionary<GatePlace, OarFigure?>();
        foreach (OarView oar in oars.InBoat(boat))
        {
            if (oar.Seat is { } seat && GateOfOar.Of(seat, oar.Side, gates) is { } gate)
            {
                found[gate] = found.ContainsKey(gate) ? null : oar.Oar.Sleeve;
            }
        }

        return gate => found.GetValueOrDefault(gate);
    }
}
