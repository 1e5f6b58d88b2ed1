using Gatewright.Core;
using Gatewright.Core.Oars;

namespace Gatewright.Journal.Oars;

/// <summary>The sleeves of the oars that a boat is rowed with, gate by gate.</summary>
public sealed class SleevesInBoat
{
    private readonly Dictionary<GatePlace, OarView?> _found = [];

    /// <param name="oars">The club's oars.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="gates">The boat's gates.</param>
    public SleevesInBoat(OarsView oars, string boat, IReadOnlyList<GatePlace> gates)
    {
        ArgumentNullException.ThrowIfNull(oars);
        ArgumentNullException.ThrowIfNull(gates);
        foreach (OarView oar in oars.InBoat(boat))
        {
            if (oar.Seat is { } seat && GateOfOar.Of(seat, oar.Side, gates) is { } gate)
            {
                _found[gate] = _found.ContainsKey(gate) ? null : oar;
            }
        }
    }

    /// <summary>
    /// The sleeve of the oar in a gate; null where no oar of the boat is at that seat and side, where its sleeve was never read,
    /// and where several are: which of them is rowed nobody said.
    /// </summary>
    public OarFigure? Sleeve(GatePlace gate) => _found.GetValueOrDefault(gate)?.Oar.Sleeve;

    /// <summary>What the oar in a gate is called; null where there is none, or several.</summary>
    public string? Name(GatePlace gate) => _found.GetValueOrDefault(gate)?.Title;
}
