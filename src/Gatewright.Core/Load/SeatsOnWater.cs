using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>What is known of a boat's seats and oars beside its gates: each seat's rig, each oar's sleeve.</summary>
/// <param name="rigs">The rig of each seat, as it is known.</param>
/// <param name="sleeves">
/// The sleeve of the oar that is rowed in a gate; null where it was never read. A sleeve among the boat's own readings comes
/// before it.
/// </param>
/// <param name="oars">What the oar of such a sleeve is called; null for no names.</param>
public sealed class SeatsOnWater(
    Func<int, MeasuredSeat> rigs, Func<GatePlace, OarFigure?> sleeves, Func<GatePlace, string?>? oars = null)
{
    /// <summary>A seat's rig.</summary>
    public MeasuredSeat Rig(int seat) => rigs(seat);

    /// <summary>The sleeve of the oar in a gate, or null.</summary>
    public OarFigure? Sleeve(GatePlace gate) => sleeves(gate);

    /// <summary>What the oar is called that is rowed in a gate; null where nobody said.</summary>
    public string? Oar(GatePlace gate) => oars?.Invoke(gate);

    /// <summary>From the measures there are of a boat, else what they are to be; and the sleeves.</summary>
    public static SeatsOnWater Of(
        RigTargets targets, IReadOnlyList<RigReading> measures, Func<GatePlace, OarFigure?> sleeves, Func<GatePlace, string?>? oars = null)
    {
        var figures = RigFigures.Of(measures);
        return new(seat => MeasuredSeat.Of(figures, targets, seat), sleeves, oars);
    }
}
