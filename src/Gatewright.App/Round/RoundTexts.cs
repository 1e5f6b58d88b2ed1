namespace Gatewright.App.Round;

/// <summary>Names the texts of the round.</summary>
public sealed class RoundTexts;
