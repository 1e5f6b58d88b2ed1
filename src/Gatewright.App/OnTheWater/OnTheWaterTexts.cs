namespace Gatewright.App.OnTheWater;

/// <summary>Names the texts of what a change does, and of a boat on the water.</summary>
public sealed class OnTheWaterTexts;
