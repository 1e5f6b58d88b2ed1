namespace Gatewright.Journal.Facts;

/// <summary>Fields of a thing were set: the latest setting of each field holds, the earlier ones stay in the history.</summary>
/// <param name="Thing">What kind of thing: one of <see cref="Things"/>.</param>
/// <param name="Key">Which one.</param>
/// <param name="Fields">The fields set, as text; null takes a value away.</param>
public sealed record ThingSet(string Thing, string Key, IReadOnlyDictionary<string, string?> Fields) : Fact;
