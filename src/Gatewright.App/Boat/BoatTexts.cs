namespace Gatewright.App.Boat;

/// <summary>Names the texts of a boat's pages.</summary>
public sealed class BoatTexts;
