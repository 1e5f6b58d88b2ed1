using Gatewright.Journal.Rounds;

namespace Gatewright.App.Round;

/// <summary>A reading that was just taken, or taken back.</summary>
/// <param name="Step">What was read.</param>
/// <param name="Value">What the gauge showed, degrees.</param>
/// <param name="Before">What it showed there last time, degrees; null for never.</param>
/// <param name="IsKept">Whether somebody has said that it is no slip.</param>
public sealed record TakenReading(ReadingStep Step, decimal Value, decimal? Before, bool IsKept = false)
{
    /// <summary>Whether it may be a slip, and nobody has said yet that it is none.</summary>
    public bool IsAsked => !IsKept && Slip.May(Value, Before);
}
