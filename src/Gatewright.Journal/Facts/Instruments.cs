namespace Gatewright.Journal.Facts;

/// <summary>A rack's level was read.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="BowHigh">Degrees, as a boat lies on it.</param>
/// <param name="PortLow">Degrees, as a boat lies on it.</param>
/// <param name="Date">The day, where it is not the day on which this was recorded.</param>
public sealed record RackLevelRead(string Rack, decimal BowHigh, decimal PortLow, DateOnly? Date = null) : Fact;

/// <summary>A gauge was checked by turning it end for end on one face.</summary>
/// <param name="Gauge">The gauge.</param>
/// <param name="First">The first reading, degrees.</param>
/// <param name="Turned">The reading turned, degrees.</param>
public sealed record GaugeReversed(string Gauge, decimal First, decimal Turned) : Fact;
