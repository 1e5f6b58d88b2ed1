namespace Gatewright.App.Shed;

/// <summary>Names the texts of the shed.</summary>
public sealed class ShedTexts;
