namespace Gatewright.Bench.Reporting;

/// <summary>A figure with the target it is held against.</summary>
/// <param name="Target">The target.</param>
/// <param name="Figure">What was measured, in the target's unit.</param>
/// <param name="Note">What stands behind the figure, such as the two times of a ratio.</param>
public sealed record Measured(Target Target, double Figure, string Note = "");
