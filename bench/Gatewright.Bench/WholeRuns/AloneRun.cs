namespace Gatewright.Bench.WholeRuns;

/// <summary>What a piece of work cost in a process of its own.</summary>
/// <param name="Seconds">From the start of the process to its end, on the clock.</param>
/// <param name="PeakBytes">The most memory it had at any time.</param>
public sealed record AloneRun(double Seconds, long PeakBytes);
