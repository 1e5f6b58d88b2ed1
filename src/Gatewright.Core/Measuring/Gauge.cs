using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>A pitch gauge, as far as its readings' uncertainty goes.</summary>
/// <param name="Name">What the club calls it; two readings with gauges of one name share its zero.</param>
/// <param name="Resolution">The step it is read to: the true value lies evenly within half a step either way.</param>
/// <param name="Repeatability">The standard deviation of one person reading one gate again.</param>
/// <param name="Zero">What it shows on a plumb face.</param>
public sealed record Gauge(string Name, Angle Resolution, Angle Repeatability, GaugeZero Zero)
{
    /// <summary>What a gauge is called that nobody gave a name.</summary>
    public const string Unnamed = "gauge";
}
