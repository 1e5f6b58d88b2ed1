using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;

namespace Gatewright.Journal.Rounds;

/// <summary>Far above any floor, so that no reason comes of where nobody read.</summary>
internal sealed class NothingFeared : IPitchForecast
{
    private const double AboveEveryFloor = 90;
    private static readonly GaussianMixture Above = new([1], [AboveEveryFloor], [0]);

    public GaussianMixture At(GatePlace gate, OarAngle at) => Above;
}
