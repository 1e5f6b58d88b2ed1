using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Judging;

/// <summary>What a boat's readings let one expect of a gate where it was not read.</summary>
public interface IPitchForecast
{
    /// <summary>The pitch on a level boat, in degrees, averaged over what may be wrong with it.</summary>
    GaussianMixture At(GatePlace gate, OarAngle at);
}
