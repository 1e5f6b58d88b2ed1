namespace Gatewright.App.Keeping.Gauges;

/// <summary>Names the texts of the gauges.</summary>
public sealed class GaugesTexts;
