using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>How a boat's level was come by while it was read: each way costs its own uncertainty.</summary>
public abstract record HullLevel
{
    private HullLevel()
    {
    }

    /// <summary>The level was read on this boat, to a tenth of a degree or so.</summary>
    /// <param name="Attitude">What was read.</param>
    public sealed record Read(HullAttitude Attitude) : HullLevel;

    /// <summary>The boat was packed up until the bubble stood in the middle, both ways.</summary>
    public sealed record BubbleCentred : HullLevel;

    /// <summary>The boat looked level.</summary>
    public sealed record ByEye : HullLevel;

    /// <summary>The boat lies on a rack whose own level was read once.</summary>
    /// <param name="Rack">The rack.</param>
    public sealed record OfRack(Rack Rack) : HullLevel;
}
