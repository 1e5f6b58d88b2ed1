namespace Gatewright.App.Printing;

/// <summary>Names the texts of what leads to paper.</summary>
public sealed class PrintingTexts;
