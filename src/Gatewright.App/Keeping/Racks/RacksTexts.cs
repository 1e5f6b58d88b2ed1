namespace Gatewright.App.Keeping.Racks;

/// <summary>Names the texts of the racks.</summary>
public sealed class RacksTexts;
