namespace Gatewright.Journal.Exchange.Mend;

/// <summary>The plan for a whole club, as its server made it.</summary>
/// <param name="Made">When.</param>
/// <param name="Number">The number of the last entry it knew.</param>
/// <param name="Keys">The keys of the plan's boats, in its order.</param>
/// <param name="Plan">The plan.</param>
public sealed record ClubPlan(DateTimeOffset Made, long Number, IReadOnlyList<string> Keys, MendDocument Plan);
