namespace Gatewright.App.Explaining;

/// <summary>Names the texts of the teaching picture.</summary>
public sealed class ExplainingTexts;
