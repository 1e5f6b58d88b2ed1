using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Replay;

/// <summary>An entry together with the fact it is.</summary>
/// <param name="Entry">The entry: who, when, where.</param>
/// <param name="Fact">What.</param>
public sealed record Recorded(Entry Entry, Fact Fact)
{
    /// <summary>An entry, read.</summary>
    /// <exception cref="FormatException">A known kind whose body cannot be read: such an entry is never let into a journal.</exception>
    public static Recorded Of(Entry entry) =>
        FactKinds.Read(entry, out string? problem) is { } fact ? new(entry, fact) : throw new FormatException(problem);
}
