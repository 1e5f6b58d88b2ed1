namespace Gatewright.App.Keeping.Boats;

/// <summary>Names the texts of the list of boats and of a boat's form.</summary>
public sealed class BoatsTexts;
