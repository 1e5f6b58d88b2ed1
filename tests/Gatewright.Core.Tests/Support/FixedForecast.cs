using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Support;

/// <summary>Expects the same of every gate, and remembers where it was asked.</summary>
internal sealed class FixedForecast(GaussianMixture mixture) : IPitchForecast
{
    private readonly List<(GatePlace Gate, OarAngle At)> _asked = [];

    public static FixedForecast Healthy => new(new([1], [4], [0.5]));

    public IReadOnlyList<(GatePlace Gate, OarAngle At)> Asked => _asked;

    public GaussianMixture At(GatePlace gate, OarAngle at)
    {
        _asked.Add((gate, at));
        return mixture;
    }
}
