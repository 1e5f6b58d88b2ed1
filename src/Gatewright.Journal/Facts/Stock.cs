namespace Gatewright.Journal.Facts;

/// <summary>Parts came in or went out.</summary>
/// <param name="Part">insert, shim, washer or pin.</param>
/// <param name="Size">Degrees or millimetres.</param>
/// <param name="Change">How many more (or, negative, fewer).</param>
/// <param name="Job">The job that used them, if one did.</param>
public sealed record StockChanged(string Part, decimal Size, int Change, string? Job = null) : Fact;

/// <summary>A shelf was counted: what was recorded before no longer matters for it.</summary>
/// <param name="Part">insert, shim, washer or pin.</param>
/// <param name="Size">Degrees or millimetres.</param>
/// <param name="Count">How many there are.</param>
public sealed record StockCounted(string Part, decimal Size, int Count) : Fact;
