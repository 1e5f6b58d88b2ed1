namespace Gatewright.Journal.Facts;

/// <summary>What an entry says: its body, read. Values stand as they were entered; they are converted where used.</summary>
public abstract record Fact;

/// <summary>An entry of a kind or version that this program does not know: kept, passed on, and left out of the club.</summary>
public sealed record UnknownFact : Fact;

/// <summary>An earlier entry does not hold. A retraction can itself be retracted.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Reason">Why, in the member's words.</param>
public sealed record Retracted(Guid Entry, string? Reason = null) : Fact;
