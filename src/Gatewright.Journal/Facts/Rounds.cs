namespace Gatewright.Journal.Facts;

/// <summary>A round along the racks began.</summary>
/// <param name="Round">Its key.</param>
/// <param name="Standard">The standard it is judged by.</param>
public sealed record RoundStarted(string Round, string? Standard = null) : Fact;

/// <summary>A round ended.</summary>
/// <param name="Round">Its key.</param>
public sealed record RoundEnded(string Round) : Fact;
