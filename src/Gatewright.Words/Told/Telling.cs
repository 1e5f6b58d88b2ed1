namespace Gatewright.Words.Told;

/// <summary>How much of a check is told.</summary>
/// <param name="All">Whether every gate, reason and remedy is, not only those that matter.</param>
/// <param name="Explain">Whether it is told where the uncertainty comes from.</param>
/// <param name="HowToTellAll">What is said where something is left out, such as "--all tells all"; null for nothing.</param>
public sealed record Telling(bool All = false, bool Explain = false, string? HowToTellAll = null);
