using Gatewright.Core.Checking;
using Gatewright.Core.Judging;

namespace Gatewright.Words.Told;

/// <summary>A shed that is to be told of.</summary>
/// <param name="Boats">Its boats, in the order in which they are told.</param>
/// <param name="Standard">What they were judged by, where a boat has none of its own.</param>
public sealed record ToldShed(IReadOnlyList<BoatCheck> Boats, Standard Standard)
{
    /// <summary>What was odd about the input, a sentence each without its full stop.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>The boats that somebody holds ashore, whatever their gates read.</summary>
    public IReadOnlyList<string> Held { get; init; } = [];

    /// <summary>The boats that a gate keeps ashore which was changed since it was read, whatever the others read.</summary>
    public IReadOnlyList<string> ChangedUnread { get; init; } = [];

    /// <summary>Whether anything has to be read again or mended, so that boats will be lifted.</summary>
    public bool NeedsAttention { get; init; }
}
