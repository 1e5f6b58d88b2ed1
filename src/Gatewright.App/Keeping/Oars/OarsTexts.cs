namespace Gatewright.App.Keeping.Oars;

/// <summary>Names the texts of the oars.</summary>
public sealed class OarsTexts;
