namespace Gatewright.Words.Suspected;

/// <summary>Something that may be wrong, in words, and how likely it is.</summary>
/// <param name="Words">What.</param>
/// <param name="Probability">0 to 1.</param>
public readonly record struct Likely(string Words, double Probability);
