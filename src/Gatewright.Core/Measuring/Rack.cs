using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>Where a boat lies. Its level is read once and serves every boat that lies firmly on it.</summary>
/// <param name="Name">What the club calls it.</param>
/// <param name="Attitude">How a boat lies on it, bow high and port low as it lies.</param>
/// <param name="Bedding">Whether a boat takes the rack's level or sinks into it.</param>
/// <param name="ReadOn">The day its level was read, if known.</param>
public sealed record Rack(string Name, HullAttitude Attitude, Bedding Bedding, DateOnly? ReadOn = null);
