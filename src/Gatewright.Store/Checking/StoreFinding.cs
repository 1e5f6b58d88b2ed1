namespace Gatewright.Store.Checking;

/// <summary>Something found when a store was looked through.</summary>
/// <param name="Weight">How grave it is.</param>
/// <param name="Club">The club it is about; null when it is about the store as a whole.</param>
/// <param name="Number">The number of the entry it is about; null when it is about none.</param>
/// <param name="What">What is wrong; a sentence.</param>
/// <param name="Remedy">What to do about it; a sentence.</param>
public sealed record StoreFinding(FindingWeight Weight, string? Club, long? Number, string What, string Remedy);
