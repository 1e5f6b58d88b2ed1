using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>The rigs of a boat's seats, as a balance takes them: measured where they were, else the targets.</summary>
public static class SeatRigs
{
    /// <summary>Of each seat, from the measures there are.</summary>
    public static Func<int, SeatRig> Of(BoatClass boatClass, IReadOnlyList<RigReading> measures)
    {
        RigTargets targets = RigTargets.Starting(boatClass, crew: null);
        var figures = RigFigures.Of(measures);
        return seat => MeasuredSeat.Of(figures, targets, seat).Rig;
    }
}
