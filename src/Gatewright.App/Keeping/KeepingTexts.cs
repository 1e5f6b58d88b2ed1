namespace Gatewright.App.Keeping;

/// <summary>Names the texts that the pages of what a club keeps have in common.</summary>
public sealed class KeepingTexts;
