using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Load;

/// <summary>What one gate does to boat and rower, as the mean over the drive.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Handle">What the hands lift to hold the blade at its depth, in newtons.</param>
/// <param name="FromMean">That, less the mean of all the boat's handles: what one seat feels beside the others.</param>
/// <param name="Roll">Its roll moment in newton metres, positive down to starboard.</param>
/// <param name="RollOff">That, less what the gate would do at its target with the same oar: what mending it can take away.</param>
/// <param name="Oar">The oar in it.</param>
public sealed record GateBalance(
    GatePlace Gate, LoadEstimate Handle, LoadEstimate FromMean, LoadEstimate Roll, LoadEstimate RollOff, OarOnWater Oar)
{
    /// <summary>The same with so many times the pull.</summary>
    internal GateBalance Times(double factor) => this with
    {
        Handle = Handle.Times(factor),
        FromMean = FromMean.Times(factor),
        Roll = Roll.Times(factor),
        RollOff = RollOff.Times(factor),
    };
}

/// <summary>An oar and its arc, as a balance takes them.</summary>
/// <param name="Sleeve">Its sleeve error, which adds to the gate's pitch; 0 within the spread of true oars where it was never read.</param>
/// <param name="IsSleeveRead">Whether it was.</param>
/// <param name="Catch">The angle at the catch.</param>
/// <param name="Finish">The angle at the finish, negative.</param>
/// <param name="IsArcOwn">Whether they follow from the seat's rig; else they are the stations'.</param>
public sealed record OarOnWater(Estimate Sleeve, bool IsSleeveRead, Estimate Catch, Estimate Finish, bool IsArcOwn);

/// <summary>The whole boat's roll moment at one place of the drive.</summary>
/// <param name="At">The oars' angle.</param>
/// <param name="Roll">In newton metres, positive down to starboard.</param>
public sealed record RollPoint(OarAngle At, LoadEstimate Roll);
